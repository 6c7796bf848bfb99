package drivetrain.repl.command.keep;

import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Offer;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** File names as they are typed. */
final class FileWords {

    private static final int MOST = 1_000;
    private static final String DOCUMENTS = "*.{yaml,yml,json}";

    private FileWords() {}

    /** Reads a file name; one that starts with {@code ~/} lies in the user's home folder. */
    static Path path(String text) {
        try {
            String home = System.getProperty("user.home", "");
            return text.startsWith("~/") && !home.isEmpty() ? Path.of(home, text.substring(2)) : Path.of(text);
        } catch (InvalidPathException unusable) {
            throw Refusal.of("file", text, "cannot be a file name").asException();
        }
    }

    /** Offers the documents of the present folder. */
    static List<Offer> offers() {
        List<Offer> offers = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(Path.of(""), DOCUMENTS)) {
            for (Path file : files) {
                if (offers.size() < MOST) {
                    offers.add(new Offer(file.toString(), ""));
                }
            }
        } catch (IOException | DirectoryIteratorException unreadable) {
            return List.of();
        }
        offers.sort(Comparator.comparing(Offer::value));
        return offers;
    }
}
