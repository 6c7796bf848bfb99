package drivetrain.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Where the documentation is: the tests run in the folder that holds README.md. */
final class Pages {

    static final Path README = Path.of("README.md");
    static final Path GUIDE = Path.of("docs", "guide");
    static final Path TRANSCRIPTS = Path.of("docs", "transcripts");

    private Pages() {}

    /** README.md and the pages of the guide, those that exist. */
    static List<Path> markdown() {
        List<Path> pages = new ArrayList<>();
        if (Files.exists(README)) {
            pages.add(README);
        }
        pages.addAll(filesIn(GUIDE, ".md"));
        return pages;
    }

    static List<Path> transcripts() {
        return filesIn(TRANSCRIPTS, ".txt");
    }

    static List<FencedBlock> blocks(Path page) {
        return FencedBlock.of(page.toString(), read(page));
    }

    static String read(Path page) {
        try {
            return Files.readString(page);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<Path> filesIn(Path folder, String suffix) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(suffix))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
