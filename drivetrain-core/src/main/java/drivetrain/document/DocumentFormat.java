package drivetrain.document;

import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import java.nio.file.Path;
import java.util.Locale;

/** The notation of a document. Both hold one and the same model. */
public enum DocumentFormat {
    /** YAML 1.2 without anchors, aliases and tags; what people write and read. */
    YAML("YAML"),
    /** JSON, RFC 8259. */
    JSON("JSON");

    private final String label;

    DocumentFormat(String label) {
        this.label = label;
    }

    /**
     * Returns the name of the notation.
     *
     * @return the name as its standard writes it
     */
    public String label() {
        return label;
    }

    /**
     * Tells the notation from the end of a file's name.
     *
     * @param file the file, which need not exist
     * @return the notation
     * @throws drivetrain.refusal.RefusedException if the name does not end in .yaml, .yml or .json
     */
    public static DocumentFormat of(Path file) {
        return of(file.toString());
    }

    static DocumentFormat of(String name) {
        String end = name.toLowerCase(Locale.ROOT);
        if (end.endsWith(".yaml") || end.endsWith(".yml")) {
            return YAML;
        }
        if (end.endsWith(".json")) {
            return JSON;
        }
        throw Refusal.of("document", "", "the name of the file does not say what is in it")
                .allowing("a name that ends in .yaml, .yml or .json")
                .in(new Place(name, 0, 0))
                .asException();
    }
}
