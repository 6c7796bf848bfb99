package drivetrain.repl.shell;

import drivetrain.repl.command.Line;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The lines typed in earlier sessions, one a line, readable by the user alone.
 *
 * <p>Each line is written by one call at the end of the file, so that two shells at once lose nothing. A file that has grown large is set aside
 * under a second name and a new one is begun; both are read. What cannot be read or written is left out without a word: history is a
 * convenience, and must not keep the shell from starting.
 */
final class HistoryFile {

    private static final int LARGE = 1_000_000;
    private static final int MOST_LINES = 5_000;
    private static final Set<PosixFilePermission> OWNER_ONLY = PosixFilePermissions.fromString("rw-------");
    private static final Set<PosixFilePermission> OWNER_ONLY_FOLDER = PosixFilePermissions.fromString("rwx------");
    private static final boolean POSIX =
            FileSystems.getDefault().supportedFileAttributeViews().contains("posix");

    private final Path file;
    private final Path older;

    HistoryFile(Path folder) {
        this.file = folder.resolve("history");
        this.older = folder.resolve("history.older");
    }

    /** Returns the lines, oldest first, leaving out whatever is damaged. */
    List<String> read() {
        List<String> lines = new ArrayList<>();
        setAsideIfLarge();
        readInto(lines, older);
        readInto(lines, file);
        return lines.size() <= MOST_LINES ? lines : lines.subList(lines.size() - MOST_LINES, lines.size());
    }

    /** Adds a line at once. */
    void append(String line) {
        try {
            if (!Files.exists(file)) {
                Files.createDirectories(file.getParent(), attributes(OWNER_ONLY_FOLDER));
            }
            try (FileChannel channel = open()) {
                if (POSIX && !Files.getPosixFilePermissions(file).equals(OWNER_ONLY)) {
                    Files.setPosixFilePermissions(file, OWNER_ONLY);
                }
                channel.write(ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.UTF_8)));
            }
        } catch (IOException | UnsupportedOperationException unwritable) {
            // The line stays in this session's memory.
        }
    }

    private FileChannel open() throws IOException {
        Set<StandardOpenOption> options =
                Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.APPEND);
        return FileChannel.open(file, options, attributes(OWNER_ONLY));
    }

    private static FileAttribute<?>[] attributes(Set<PosixFilePermission> permissions) {
        return POSIX
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(permissions)}
                : new FileAttribute<?>[0];
    }

    private void setAsideIfLarge() {
        try {
            if (Files.isRegularFile(file) && Files.size(file) > LARGE) {
                Files.move(file, older, StandardCopyOption.ATOMIC_MOVE);
            }
        } catch (IOException unmovable) {
            // The large file goes on.
        }
    }

    private static void readInto(List<String> lines, Path from) {
        if (!Files.isRegularFile(from)) {
            return;
        }
        try (InputStream in = Files.newInputStream(from)) {
            long size = Files.size(from);
            in.skipNBytes(Math.max(0, size - 2L * LARGE));
            String text = new String(in.readNBytes(2 * LARGE), StandardCharsets.UTF_8);
            for (String line : text.split("\n", -1)) {
                if (isSound(line)) {
                    lines.add(line);
                }
            }
        } catch (IOException unreadable) {
            // What has been read so far will do.
        }
    }

    private static boolean isSound(String line) {
        return !line.isBlank()
                && line.length() <= Line.LONGEST
                && line.chars().noneMatch(sign -> Character.isISOControl(sign) || sign == '\uFFFD');
    }
}
