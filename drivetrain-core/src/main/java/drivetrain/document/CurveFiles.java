package drivetrain.document;

import drivetrain.refusal.RefusedException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Pattern;

/** Finds the files that a catalog names: below its own folder, never outside. */
interface CurveFiles {

    /** Reads a file by its path below the folder of the catalog; the path has been checked. */
    SourceText read(String path) throws IOException;

    /** Returns the files beside a catalog file; links that lead out of its folder are refused. */
    static CurveFiles beside(Path catalog) {
        return path -> {
            Path folder = catalog.toAbsolutePath().getParent();
            if (folder == null) {
                throw new IOException("the catalog is in no folder");
            }
            Path file = folder.resolve(path);
            if (!file.toRealPath().startsWith(folder.toRealPath())) {
                throw new IOException("the file lies outside the catalog's folder");
            }
            Path shown = catalog.resolveSibling(path);
            return SourceBytes.read(Files.exists(shown) ? shown : file);
        };
    }

    /** Returns the files beside a packed catalog. */
    static CurveFiles packedIn(String folder) {
        return path -> SourceBytes.readResource(folder + "/" + path);
    }

    /** Returns the files of a catalog that is not a file: none. */
    static CurveFiles none() {
        return path -> {
            throw new IOException("the catalog is not a file");
        };
    }

    /** Reads the text of the file that a value names. */
    default SourceText named(Value value) {
        String path = value.line();
        if (!Names.PATH.matcher(path).matches()
                || Arrays.asList(path.split("/", -1)).contains("..")) {
            throw value.refusal(path, "is not a file below the catalog's folder")
                    .allowing(
                            "a name such as curves/v8.csv, with letters, digits, spaces, \".\", \"_\", \"-\" and \"/\"")
                    .asException();
        }
        try {
            return read(path);
        } catch (IOException e) {
            throw cannotRead(value, path);
        }
    }

    private static RefusedException cannotRead(Value value, String path) {
        return value.refusal(path, "cannot be read from the catalog's folder")
                .allowing("the name of a file that lies beside the catalog")
                .asException();
    }

    /** What a path may look like: segments that do not begin with a dot or a space, the last one ending in .csv. */
    final class Names {
        static final Pattern PATH =
                Pattern.compile("(?:[\\p{L}0-9_-][\\p{L}0-9 ._-]*/)*[\\p{L}0-9_-][\\p{L}0-9 ._-]*\\.csv");

        private Names() {}
    }
}
