package drivetrain.document;

import drivetrain.document.Node.Scalar;
import drivetrain.document.Node.ScalarType;
import drivetrain.refusal.RefusedException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;

/**
 * YAML 1.2 with what a parts list needs of it: no anchors, aliases or tags, one document, indented with spaces.
 *
 * <p>What an unquoted scalar is follows from its own text, not from the parser: a decimal number, {@code true} or {@code false}, nothing
 * ({@code null}, {@code ~}), or else a text. So {@code no}, {@code 41:11} and {@code 0x1F} are texts.
 */
final class YamlNotation implements Notation {

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]++(?:\\.[0-9]*+)?|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?+");
    private static final Pattern FAULT = Pattern.compile("\\n? in reader, line ([0-9]{1,9}), column ([0-9]{1,9}):");

    @Override
    public JsonParser open(SourceText source) {
        int tab = source.text().indexOf('\t');
        if (tab >= 0) {
            throw refusal(source, tab, "has a tab", "spaces");
        }
        return factory(source.text()).createParser(ObjectReadContext.empty(), source.text());
    }

    /**
     * Makes a factory whose buffer takes the whole text: the parser's own small buffer costs quadratic time on long lines, and fails where a
     * pair of surrogates lies across its end.
     */
    private static YAMLFactory factory(String text) {
        LoadSettings settings = LoadSettings.builder()
                .setCodePointLimit(Limits.DOCUMENT_BYTES + 1)
                .setBufferSize(text.length() + 2)
                .build();
        return YAMLFactory.builder()
                .loadSettings(settings)
                .disable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .build();
    }

    @Override
    public int index(SourceText source, JsonParser parser) {
        TokenStreamLocation location = parser.currentTokenLocation();
        return source.index(location.getLineNr(), location.getColumnNr());
    }

    @Override
    public void refuseMarks(SourceText source, int index) {
        char first = charAt(source.text(), index);
        if (first == '&' || first == '*') {
            throw refusal(
                    source,
                    index,
                    "has an anchor or alias",
                    "every value written out; a text that begins so in quotation marks");
        }
        if (first == '!') {
            throw refusal(
                    source, index, "has a tag", "a value without a tag; a text that begins with ! in quotation marks");
        }
    }

    @Override
    public Scalar scalar(SourceText source, JsonParser parser, JsonToken token) {
        int index = index(source, parser);
        String text = parser.getString();
        char first = charAt(source.text(), index);
        if (first == '"' || first == '\'') {
            boolean verbatim = source.text().startsWith(text, index + 1);
            return new Scalar(source.place(index + 1), ScalarType.TEXT, text, verbatim);
        }
        if (first == '|' || first == '>') {
            return new Scalar(source.place(index), ScalarType.TEXT, text, false);
        }
        return new Scalar(
                source.place(index), plainType(text), text, source.text().startsWith(text, index));
    }

    private static ScalarType plainType(String text) {
        return switch (text) {
            case "", "~", "null", "Null", "NULL" -> ScalarType.NOTHING;
            case "true", "false" -> ScalarType.FLAG;
            default -> NUMBER.matcher(text).matches() ? ScalarType.NUMBER : ScalarType.TEXT;
        };
    }

    /**
     * The parser reports in lines "what it was doing, where it began, what it found, where, excerpt". The last place is the fault, except
     * where the document ends too early: then it is the place where the open value began.
     */
    @Override
    public RefusedException malformed(SourceText source, JacksonException cause) {
        String report = cause.getOriginalMessage();
        Matcher place = FAULT.matcher(report);
        String problem = "";
        int index = fallbackIndex(source, cause);
        int from = 0;
        while (place.find()) {
            String before = report.substring(from, place.start());
            problem = before.substring(before.lastIndexOf('\n') + 1);
            if (from == 0 || !endsEarly(report)) {
                index = source.index(Integer.parseInt(place.group(1)), Integer.parseInt(place.group(2)));
            }
            from = place.end();
        }
        return refusal(source, index, plainWords(problem, charAt(source.text(), index)), hint(problem));
    }

    private static int fallbackIndex(SourceText source, JacksonException cause) {
        TokenStreamLocation location = cause.getLocation();
        return location == null ? 0 : source.index(location.getLineNr(), location.getColumnNr());
    }

    private static String plainWords(String problem, char fault) {
        if (problem.contains("mapping values are not allowed")) {
            return "has a second colon on one line, or a line that is indented too far";
        }
        if (endsEarly(problem)) {
            return "has a quotation mark or bracket here that is never closed";
        }
        if (problem.contains("cannot start any token")) {
            return "has a text that begins with " + Characters.excerpt(String.valueOf(fault));
        }
        if (problem.contains("could not find expected ':'")) {
            return "has a line without a colon after the name";
        }
        return fault == 0
                ? "ends before it is complete"
                : "cannot be read from \"" + Characters.excerpt(String.valueOf(fault)) + "\" on";
    }

    private static boolean endsEarly(String problem) {
        return problem.contains("end of stream") || problem.contains("stream end");
    }

    private static String hint(String problem) {
        return problem.contains("mapping values are not allowed") || problem.contains("cannot start any token")
                ? "such a text in quotation marks; fields of one group indented alike"
                : "\"name: value\" with fields of one group indented alike";
    }

    @Override
    public RefusedException trailing(SourceText source, int index) {
        return refusal(source, index, "goes on after its end", "one document in a file");
    }

    private static char charAt(String text, int index) {
        return index < text.length() ? text.charAt(index) : 0;
    }

    private static RefusedException refusal(SourceText source, int index, String problem, String allowed) {
        return Notation.refusal(DocumentFormat.YAML, source, index, problem, allowed);
    }
}
