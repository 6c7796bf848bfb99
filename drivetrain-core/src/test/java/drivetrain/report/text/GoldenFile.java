package drivetrain.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Text kept as a file beside the tests. Run the tests with {@code -Dgolden=write} to write the files anew, then read what changed before it is
 * kept.
 */
final class GoldenFile {

    private GoldenFile() {}

    static void matches(String name, String text) {
        if ("write".equals(System.getProperty("golden"))) {
            write(name, text);
        }
        assertThat(text).as(name).isEqualTo(read(name));
    }

    private static String read(String name) {
        try (InputStream file = GoldenFile.class.getResourceAsStream(name)) {
            assertThat(file).as("file " + name).isNotNull();
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(String name, String text) {
        for (String root : new String[] {"src/test/resources", "target/test-classes"}) {
            try {
                Files.writeString(Path.of(root, "drivetrain", "report", "text", name), text);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
