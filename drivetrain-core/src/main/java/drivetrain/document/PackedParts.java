package drivetrain.document;

import drivetrain.combination.Catalog;
import drivetrain.combination.Part;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Packed catalogs that the build took apart: a list of their parts, and each part as a catalog of its own, read when it is first looked up. */
final class PackedParts {

    private static final String INDEX = "/parts.txt";
    private static final int WORDS = 3;

    private PackedParts() {}

    /** Returns a catalog of the parts of some documents of a folder, or empty if that folder was not taken apart. */
    static Optional<Catalog> read(String folder, List<String> documents) throws IOException {
        try (InputStream in = PackedParts.class.getResourceAsStream("/" + folder + INDEX)) {
            if (in == null) {
                return Optional.empty();
            }
            Catalog.Builder catalog = Catalog.titled(folder);
            BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] words = line.split(" ", WORDS);
                if (documents.contains(words[0])) {
                    promise(catalog, folder, PartReader.of(words[1]), words[2]);
                }
            }
            return Optional.of(catalog.build());
        }
    }

    private static <T> void promise(Catalog.Builder catalog, String folder, PartReader<T> reader, String name) {
        catalog.promise(reader.kind(), name, () -> part(folder, reader, name));
    }

    private static <T> Part<T> part(String folder, PartReader<T> reader, String name) {
        String path = folder + "/parts/" + reader.kind().key() + "/" + name + ".json";
        try {
            SourceText source = SourceBytes.readResource(path);
            return CatalogContent.of(source, DocumentFormat.JSON, CurveFiles.packedIn(folder))
                    .only(reader);
        } catch (IOException incomplete) {
            throw new UncheckedIOException(incomplete);
        }
    }
}
