package drivetrain.repl.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HistoryFileTest {

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("state/drivetrain/history");
    }

    private HistoryFile history() {
        return new HistoryFile(file().getParent());
    }

    @Test
    void writesEachLineAtOnceForTheUserAlone() throws IOException {
        history().append("open demo");
        assertThat(file()).hasContent("open demo");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file())))
                .isEqualTo("rw-------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file().getParent())))
                .isEqualTo("rwx------");
    }

    @Test
    void closesAFileThatOthersCouldRead() throws IOException {
        Files.createDirectories(file().getParent());
        Files.writeString(file(), "show\n");
        Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("rw-r--r--"));
        history().append("crawl");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file())))
                .isEqualTo("rw-------");
        assertThat(history().read()).containsExactly("show", "crawl");
    }

    @Test
    void losesNothingWhenTwoShellsWriteAtOnce() throws InterruptedException {
        List<Thread> shells = new ArrayList<>();
        for (String name : List.of("a", "b")) {
            HistoryFile own = history();
            shells.add(new Thread(() -> IntStream.range(0, 200).forEach(i -> own.append(name + i))));
        }
        shells.forEach(Thread::start);
        for (Thread shell : shells) {
            shell.join();
        }
        assertThat(history().read()).hasSize(400).doesNotHaveDuplicates();
    }

    @Test
    void leavesDamageOut() throws IOException {
        Files.createDirectories(file().getParent());
        byte[] damage = {
            's', 'h', 'o', 'w', '\n', (byte) 0xFF, (byte) 0x80, '\n', 0, 1, 2, '\n', '\n', 'c', 'r', 'a', 'w', 'l'
        };
        Files.write(file(), damage);
        assertThat(history().read()).containsExactly("show", "crawl");
    }

    @Test
    void setsALargeFileAsideAndReadsBoth() throws IOException {
        Files.createDirectories(file().getParent());
        String line = "x".repeat(999);
        Files.writeString(file(), (line + "\n").repeat(1100), StandardCharsets.UTF_8);
        assertThat(history().read()).hasSize(1100);
        assertThat(file()).doesNotExist();
        history().append("crawl");
        assertThat(history().read()).hasSize(1101).endsWith("crawl");
    }

    @Test
    void doesWithoutAPlaceToWrite() throws IOException {
        Path blocked = folder.resolve("blocked");
        Files.writeString(blocked, "a file where a folder should be");
        HistoryFile nowhere = new HistoryFile(blocked.resolve("drivetrain"));
        nowhere.append("crawl");
        assertThat(nowhere.read()).isEmpty();
    }
}
