package drivetrain.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds what the compiler does not: every public element is documented, every file is small. */
class SourcesTest {

    private static final int MOST_LINES = 350;

    @Test
    void everyPublicElementIsDocumented() throws IOException {
        assertThat(MissingComments.in(mainSources())).isEmpty();
    }

    @Test
    void everyFileIsSmall() throws IOException {
        List<String> large = new ArrayList<>();
        for (Path file : mainSources()) {
            int lines = Files.readAllLines(file).size();
            if (lines > MOST_LINES) {
                large.add(file + " has " + lines + " lines");
            }
        }
        assertThat(large).isEmpty();
    }

    @Test
    void everyPackageIsDescribed() throws IOException {
        assertThat(mainSources())
                .extracting(Path::getParent)
                .allSatisfy(folder ->
                        assertThat(folder.resolve("package-info.java")).exists());
    }

    private static List<Path> mainSources() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String module : List.of("drivetrain-core", "drivetrain-repl")) {
            Path sources = Path.of(module, "src", "main", "java");
            if (Files.isDirectory(sources)) {
                try (Stream<Path> all = Files.walk(sources)) {
                    all.filter(file -> file.toString().endsWith(".java"))
                            .sorted()
                            .forEach(files::add);
                }
            }
        }
        return files;
    }
}
