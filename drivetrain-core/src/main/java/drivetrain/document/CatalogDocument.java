package drivetrain.document;

import drivetrain.combination.Catalog;
import drivetrain.document.CatalogContent.Making;
import drivetrain.refusal.RefusedException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads catalogs: a shop's shelf, in one document or in several that together make one shelf.
 *
 * <p>Whatever is refused is refused as a whole: there is no half-read shelf.
 */
public final class CatalogDocument {

    /** The value of the field {@code document}. */
    static final String KIND = "drivetrain-catalog";

    private CatalogDocument() {}

    /**
     * Reads a catalog from one file.
     *
     * @param file a file whose name ends in .yaml, .yml or .json
     * @return the catalog
     * @throws IOException if the file cannot be read
     * @throws RefusedException if its content is refused, with its place
     */
    public static Catalog read(Path file) throws IOException {
        return read(List.of(file));
    }

    /**
     * Reads a catalog from several files, whose parts and limits are put together.
     *
     * @param files the files
     * @return the catalog; its title joins their titles, each once
     * @throws IOException if a file cannot be read
     * @throws RefusedException if the content of one is refused or two of them name a part alike, with its place
     */
    public static Catalog read(List<Path> files) throws IOException {
        List<CatalogContent> contents = new ArrayList<>();
        for (Path file : files) {
            DocumentFormat format = DocumentFormat.of(file);
            contents.add(CatalogContent.of(SourceBytes.read(file), format, CurveFiles.beside(file)));
        }
        return CatalogContent.merge(contents, Making.AT_ONCE);
    }

    /**
     * Reads a catalog that is packed with a library. Its parts are made when they are first looked up, and a fault in one is told only
     * then: who packs a catalog looks every part up once, in a test.
     *
     * @param folder the folder on the class path, such as {@code drivetrain/demo}
     * @param names the names of the documents in it; where the same document lies beside one of them as JSON, that is read instead, which
     *     takes a fraction of the time
     * @return the catalog; its title joins their titles, each once
     * @throws IOException if a document is not there
     * @throws RefusedException if the content of one is refused or two of them name a part alike, with its place
     */
    public static Catalog readPacked(String folder, List<String> names) throws IOException {
        Optional<Catalog> parts = PackedParts.read(folder, names);
        if (parts.isPresent()) {
            return parts.get();
        }
        List<CatalogContent> contents = new ArrayList<>();
        for (String name : names) {
            PackedText packed = PackedText.read(folder + "/" + name);
            contents.add(CatalogContent.of(packed.source(), packed.format(), CurveFiles.packedIn(folder)));
        }
        return CatalogContent.merge(contents, Making.ON_USE);
    }

    /**
     * Reads a catalog from a text, which cannot name a torque curve's file.
     *
     * @param name the name by which refusals call it
     * @param text the whole text
     * @param format its notation
     * @return the catalog
     * @throws RefusedException if it is refused, with its place
     */
    public static Catalog parse(String name, String text, DocumentFormat format) {
        SourceText source = SourceText.of(name, text);
        return CatalogContent.merge(List.of(CatalogContent.of(source, format, CurveFiles.none())), Making.AT_ONCE);
    }
}
