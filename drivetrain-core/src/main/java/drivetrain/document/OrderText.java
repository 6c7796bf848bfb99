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

    /** Writes the fields of an order and those of each package that is kept beside it. */
    static String write(Map<String, String> fields, Map<String, Map<String, String>> kept, DocumentFormat format) {
        return format == DocumentFormat.YAML ? yaml(fields, kept) : json(fields, kept);
    }

    private static String json(Map<String, String> fields, Map<String, Map<String, String>> kept) {
        StringBuilder text = new StringBuilder("{\n");
        text.append("  \"document\": \"").append(OrderDocument.KIND).append("\",\n");
        text.append("  \"version\": ").append(DocumentHead.CURRENT);
        fields.forEach((name, value) ->
                text.append(",\n  \"").append(name).append("\": ").append(JsonText.quoted(value)));
        if (!kept.isEmpty()) {
            text.append(",\n  \"").append(OrderFile.KEPT).append("\": {");
            String comma = "";
            for (Map.Entry<String, Map<String, String>> one : kept.entrySet()) {
                text.append(comma)
                        .append("\n    ")
                        .append(JsonText.quoted(one.getKey()))
                        .append(": {");
                appendGroup(text, one.getValue());
                text.append('}');
                comma = ",";
            }
            text.append("\n  }");
        }
        return text.append("\n}\n").toString();
    }

    private static void appendGroup(StringBuilder text, Map<String, String> fields) {
        String comma = "";
        for (Map.Entry<String, String> field : fields.entrySet()) {
            text.append(comma)
                    .append("\n      \"")
                    .append(field.getKey())
                    .append("\": ")
                    .append(JsonText.quoted(field.getValue()));
            comma = ",";
        }
        text.append(fields.isEmpty() ? "" : "\n    ");
    }

    private static String yaml(Map<String, String> fields, Map<String, Map<String, String>> kept) {
        StringBuilder text = new StringBuilder();
        text.append("document: ").append(OrderDocument.KIND).append('\n');
        text.append("version: ").append(DocumentHead.CURRENT).append('\n');
        append(text, fields, "");
        if (!kept.isEmpty()) {
            text.append(OrderFile.KEPT).append(":\n");
            kept.forEach((name, choices) -> {
                text.append("  ").append(scalar(name, "")).append(choices.isEmpty() ? ": {}\n" : ":\n");
                append(text, choices, "    ");
            });
        }
        return text.toString();
    }

    private static void append(StringBuilder text, Map<String, String> fields, String indent) {
        fields.forEach((name, value) -> text.append(indent)
                .append(name)
                .append(": ")
                .append(scalar(value, indent))
                .append('\n'));
    }

    /** Tells whether a text of several lines can stand as it is, indented. */
    private static boolean isBlock(String value) {
        return value.indexOf('\n') > 0
                && value.indexOf('\r') < 0
                && value.strip().equals(value);
    }

    private static String scalar(String value, String indent) {
        if (PLAIN.matcher(value).matches() && !NOT_A_TEXT.matcher(value).matches()) {
            return value;
        }
        if (isBlock(value)) {
            return "|-\n  " + indent + value.replaceAll("\n(?=[^\n])", "\n  " + indent);
        }
        return "\""
                + value.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\r", "\\r") + "\"";
    }
}
