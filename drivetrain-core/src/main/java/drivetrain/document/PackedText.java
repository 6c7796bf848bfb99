package drivetrain.document;

import java.io.IOException;

/**
 * The text of a document that is packed with a library.
 *
 * <p>People write YAML. The build puts the same document beside it as JSON, because a program that has just started reads that several times
 * faster; where the JSON is missing, the YAML is read.
 *
 * @param source the text
 * @param format its notation
 */
record PackedText(SourceText source, DocumentFormat format) {

    private static final String YAML = ".yaml";
    private static final String JSON = ".json";

    static PackedText read(String path) throws IOException {
        if (path.endsWith(YAML)) {
            String packed = path.substring(0, path.length() - YAML.length()) + JSON;
            if (PackedText.class.getResource("/" + packed) != null) {
                return new PackedText(SourceBytes.readResource(packed), DocumentFormat.JSON);
            }
        }
        return new PackedText(SourceBytes.readResource(path), DocumentFormat.of(path));
    }
}
