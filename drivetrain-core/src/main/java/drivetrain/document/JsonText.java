package drivetrain.document;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonWriteFeature;

/**
 * Writes a tree of texts, numbers, flags, lists and maps as one line of JSON.
 *
 * <p>The line is ASCII: every other character is escaped, so that it reads back the same through any character set and steers no terminal. Numbers are
 * written as the shortest text that reads back as the same {@code double}, whatever the version of Java.
 */
public final class JsonText {

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
            .disable(JsonWriteFeature.ESCAPE_FORWARD_SLASHES)
            .build();

    private JsonText() {}

    /**
     * Writes a tree.
     *
     * @param tree the fields in the order in which they are written; a value is a {@code String}, {@code Boolean}, {@code Integer}, {@code Long},
     *     finite {@code Double}, a {@code List} of values or a {@code Map} from names to values
     * @return one line without a line break at its end
     * @throws IllegalArgumentException if the tree holds anything else, a number that is not finite included
     */
    public static String write(Map<String, ?> tree) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
            write(json, tree);
        }
        return text.toString();
    }

    /** Writes one text with its quotation marks. */
    static String quoted(String value) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeString(value);
        }
        return text.toString();
    }

    private static void write(JsonGenerator json, Object value) {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            map.forEach((name, inner) -> {
                json.writeName((String) name);
                write(json, inner);
            });
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            list.forEach(inner -> write(json, inner));
            json.writeEndArray();
        } else {
            writeScalar(json, value);
        }
    }

    private static void writeScalar(JsonGenerator json, Object value) {
        if (value instanceof String text) {
            json.writeString(text);
        } else if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else if (value instanceof Integer || value instanceof Long) {
            json.writeNumber(((Number) value).longValue());
        } else if (value instanceof Double number && Double.isFinite(number)) {
            json.writeNumber(number);
        } else {
            throw new IllegalArgumentException("no JSON value: " + value);
        }
    }
}
