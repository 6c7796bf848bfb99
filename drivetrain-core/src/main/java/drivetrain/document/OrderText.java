package drivetrain.document;

import java.util.Map;
import java.util.regex.Pattern;

/** Writes the fields of an order, one a line, so that a person can read and change them. */
final class OrderText {

    /** What YAML reads as a text without quotation marks, whichever version of YAML reads it. */
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9](?:[A-Za-z0-9 ,./()+%_-]*[A-Za-z0-9./()+%_-])?");

    private static final Pattern NOT_A_TEXT = Pattern.compile(
            "[0-9.,_+-]*(?:[eE][0-9+-]*)?|0[xob][0-9a-fA-F_]*|[0-9-]+[tT ][0-9.: zZ+-]*|true|false|null|yes|no|on|off|y|n",
            Pattern.CASE_INSENSITIVE);

    private OrderText() {}

    static String write(Map<String, String> fields, DocumentFormat format) {
        return format == DocumentFormat.YAML ? yaml(fields) : json(fields);
    }

    private static String json(Map<String, String> fields) {
        StringBuilder text = new StringBuilder("{\n");
        text.append("  \"document\": \"").append(OrderDocument.KIND).append("\",\n");
        text.append("  \"version\": ").append(DocumentHead.CURRENT);
        fields.forEach((name, value) ->
                text.append(",\n  \"").append(name).append("\": ").append(JsonText.quoted(value)));
        return text.append("\n}\n").toString();
    }

    private static String yaml(Map<String, String> fields) {
        StringBuilder text = new StringBuilder();
        text.append("document: ").append(OrderDocument.KIND).append('\n');
        text.append("version: ").append(DocumentHead.CURRENT).append('\n');
        fields.forEach((name, value) ->
                text.append(name).append(": ").append(scalar(value)).append('\n'));
        return text.toString();
    }

    /** Tells whether a text of several lines can stand as it is, indented. */
    private static boolean isBlock(String value) {
        return value.indexOf('\n') > 0
                && value.indexOf('\r') < 0
                && value.strip().equals(value);
    }

    private static String scalar(String value) {
        if (PLAIN.matcher(value).matches() && !NOT_A_TEXT.matcher(value).matches()) {
            return value;
        }
        if (isBlock(value)) {
            return "|-\n  " + value.replaceAll("\n(?=[^\n])", "\n  ");
        }
        return "\""
                + value.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\r", "\\r") + "\"";
    }
}
