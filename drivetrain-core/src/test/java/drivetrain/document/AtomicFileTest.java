package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {

    private static final int KILLS = 6;

    @TempDir
    Path folder;

    private List<String> names() throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void writesANewFileAndReplacesAnOldOne() throws IOException {
        Path file = folder.resolve("order.yaml");
        AtomicFile.write(file, "one \u00E9\n");
        assertThat(file).hasContent("one \u00E9\n");
        AtomicFile.write(file, "two");
        assertThat(file).hasContent("two");
        AtomicFile.write(file, "");
        assertThat(file).isEmptyFile();
        assertThat(names()).containsExactly("order.yaml");
    }

    @Test
    void keepsThePermissionsOfTheOldFile() throws IOException {
        Path file = Files.createFile(folder.resolve("order.yaml"));
        Set<PosixFilePermission> own = PosixFilePermissions.fromString("rw-r-----");
        Files.setPosixFilePermissions(file, own);
        AtomicFile.write(file, "x");
        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(own);
    }

    @Test
    void keepsASymbolicLinkAndReplacesItsTarget() throws IOException {
        Path target =
                Files.writeString(Files.createDirectory(folder.resolve("real")).resolve("order.yaml"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), target);
        AtomicFile.write(link, "new");
        assertThat(link).isSymbolicLink().hasContent("new");
        assertThat(target).hasContent("new");
        assertThat(names()).containsExactly("link.yaml", "real");
    }

    @Test
    void writesToANameWithoutAFolder() throws IOException {
        Path file = Path.of("atomic-file-test-" + System.nanoTime() + ".yaml");
        try {
            AtomicFile.write(file, "x");
            assertThat(file).hasContent("x");
        } finally {
            Files.deleteIfExists(file);
        }
    }

    @Test
    void sweepsOnlyItsOwnTemporariesAndOnlyOldOnes() throws IOException {
        FileTime old = FileTime.from(Instant.now().minusSeconds(120));
        for (String name :
                List.of(".order.yaml.1a.part", ".other.yaml.1a.part", "order.yaml.1a.part", ".order.yaml.1a")) {
            Files.setLastModifiedTime(Files.createFile(folder.resolve(name)), old);
        }
        Files.createFile(folder.resolve(".order.yaml.2b.part"));
        Files.setLastModifiedTime(Files.createDirectory(folder.resolve(".order.yaml.dir.part")), old);
        AtomicFile.write(folder.resolve("order.yaml"), "x");
        assertThat(names())
                .containsExactly(
                        ".order.yaml.1a",
                        ".order.yaml.2b.part",
                        ".order.yaml.dir.part",
                        ".other.yaml.1a.part",
                        "order.yaml",
                        "order.yaml.1a.part");
    }

    @Test
    void refusesFoldersAndMissingFoldersAndLeavesNothingBehind() throws IOException {
        assertThatThrownBy(() -> AtomicFile.write(folder, "x"))
                .isInstanceOf(FileAlreadyExistsException.class)
                .hasMessageContaining("is a folder");
        assertThatThrownBy(() -> AtomicFile.write(Path.of("/"), "x")).isInstanceOf(FileAlreadyExistsException.class);
        assertThatThrownBy(() -> AtomicFile.write(folder.resolve("no/order.yaml"), "x"))
                .isInstanceOf(NoSuchFileException.class);
        assertThat(names()).isEmpty();
    }

    /** A writer in a process of its own is killed at random moments, as by kill -9; the file must be whole each time. */
    @Test
    void leavesTheOldOrTheNewFileWholeWhenTheWriterIsKilled() throws Exception {
        Path file = folder.resolve("order.yaml");
        AtomicFile.write(file, Writer.text(0));
        for (int i = 0; i < KILLS; i++) {
            Process writer = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("java.class.path"),
                            Writer.class.getName(),
                            file.toString())
                    .redirectErrorStream(true)
                    .start();
            assertThat(writer.getInputStream().read())
                    .as("the writer has begun")
                    .isEqualTo('!');
            Thread.sleep(37L * i + 5L);
            writer.destroyForcibly();
            assertThat(writer.waitFor(60, TimeUnit.SECONDS)).isTrue();
            String text = Files.readString(file);
            assertThat(text).isEqualTo(Writer.text(Integer.parseInt(text.substring(0, text.indexOf(' ')))));
        }
        try (Stream<Path> paths = Files.list(folder)) {
            FileTime old = FileTime.from(Instant.now().minusSeconds(120));
            for (Path path : paths.filter(path -> !path.equals(file)).toList()) {
                Files.setLastModifiedTime(path, old);
            }
        }
        AtomicFile.write(file, "last");
        assertThat(names()).containsExactly("order.yaml");
    }

    /** Writes one text after the other until it is killed. */
    static final class Writer {

        private Writer() {}

        static String text(int number) {
            return number + " " + "0123456789abcdef".repeat(20_000 + number % 7) + " " + number;
        }

        public static void main(String[] arguments) throws IOException {
            for (int number = 1; ; number++) {
                AtomicFile.write(Path.of(arguments[0]), text(number));
                if (number == 1) {
                    System.out.print('!');
                    System.out.flush();
                }
            }
        }
    }
}
