package drivetrain.repl.shell;

import drivetrain.refusal.Refusal;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Objects;
import java.util.Optional;

/** What went wrong with a file, in the user's words. */
final class FileTrouble {

    private FileTrouble() {}

    /** Words the trouble of a command with a file that the exception names. */
    static Refusal of(UncheckedIOException trouble) {
        IOException cause = Objects.requireNonNull(trouble.getCause());
        String file = cause instanceof FileSystemException located
                ? Optional.ofNullable(located.getFile()).orElse("")
                : "";
        return of(file, cause);
    }

    /** Words the trouble with a file. */
    static Refusal of(String file, IOException trouble) {
        return Refusal.of("file", file, problem(trouble));
    }

    private static String problem(IOException trouble) {
        if (trouble instanceof NoSuchFileException || trouble instanceof FileNotFoundException) {
            return "does not exist";
        }
        if (trouble instanceof AccessDeniedException) {
            return "may not be read or written by you";
        }
        if (trouble instanceof FileAlreadyExistsException
                || trouble instanceof NotDirectoryException
                || trouble instanceof DirectoryNotEmptyException) {
            return "cannot be used as a file";
        }
        if (trouble instanceof CharacterCodingException) {
            return "is not text in UTF-8";
        }
        if (trouble.getCause() instanceof ReadOnlyFileSystemException) {
            return "lies on a disk that cannot be written";
        }
        String reason = trouble instanceof FileSystemException located ? located.getReason() : trouble.getMessage();
        return "cannot be read or written" + (reason == null || reason.isBlank() ? "" : ": " + reason);
    }
}
