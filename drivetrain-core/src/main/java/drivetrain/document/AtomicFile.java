package drivetrain.document;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.concurrent.ThreadLocalRandom;

/**
 * Replaces a file so that it is whole at every moment: whoever reads it, and whatever stops the writer, finds the old text or the new one.
 *
 * <p>The new text goes to a temporary file in the same folder, is forced to the disk, and takes the name in one step; then the folder is forced to the disk.
 * A writer that was killed leaves its temporary file behind; the next write of the same file removes it once it is a minute old.
 */
public final class AtomicFile {

    private static final String MARK = ".part";
    private static final Duration STALE = Duration.ofMinutes(1);
    private static final int MOST_ATTEMPTS = 100;

    private AtomicFile() {}

    /**
     * Writes a text as UTF-8. An existing file keeps its permissions; a symbolic link stays a link and its target is replaced.
     *
     * @param file the file, in a folder that exists
     * @param text the whole new text
     * @throws IOException if it cannot be written; the file is then as it was before
     */
    public static void write(Path file, String text) throws IOException {
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path folder = target.getParent();
        Path name = target.getFileName();
        if (folder == null || name == null || Files.isDirectory(target)) {
            throw new FileAlreadyExistsException(file.toString(), null, "is a folder");
        }
        if (!Files.isDirectory(folder)) {
            throw new NoSuchFileException(folder.toString());
        }
        String prefix = "." + name + ".";
        sweep(folder, prefix);
        Path temporary = create(folder, prefix);
        try {
            fill(temporary, text);
            keepPermissions(target, temporary);
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(temporary);
        }
        force(folder);
    }

    private static Path create(Path folder, String prefix) throws IOException {
        for (int attempt = 1; ; attempt++) {
            String random =
                    Integer.toHexString(ThreadLocalRandom.current().nextInt()).toLowerCase(Locale.ROOT);
            try {
                return Files.createFile(folder.resolve(prefix + random + MARK));
            } catch (FileAlreadyExistsException e) {
                if (attempt == MOST_ATTEMPTS) {
                    throw e;
                }
            }
        }
    }

    private static void fill(Path temporary, String text) throws IOException {
        try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }

    private static void keepPermissions(Path target, Path temporary) throws IOException {
        PosixFileAttributeView from = Files.getFileAttributeView(target, PosixFileAttributeView.class);
        PosixFileAttributeView to = Files.getFileAttributeView(temporary, PosixFileAttributeView.class);
        if (from != null && to != null && Files.exists(target)) {
            to.setPermissions(from.readAttributes().permissions());
        }
    }

    /** Forces the new name to the disk; a system that cannot open folders keeps its own order of writing. */
    private static void force(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // the file is in place; only a loss of power right now could bring the old one back, whole
        }
    }

    private static void sweep(Path folder, String prefix) throws IOException {
        FileTime oldest = FileTime.from(Instant.now().minus(STALE));
        DirectoryStream.Filter<Path> temporaries = path -> {
            String name = String.valueOf(path.getFileName());
            return name.startsWith(prefix) && name.endsWith(MARK);
        };
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, temporaries)) {
            for (Path path : found) {
                if (Files.isRegularFile(path) && Files.getLastModifiedTime(path).compareTo(oldest) < 0) {
                    Files.deleteIfExists(path);
                }
            }
        }
    }
}
