package drivetrain.document;

import drivetrain.document.Node.Scalar;
import drivetrain.document.Node.ScalarType;
import drivetrain.refusal.RefusedException;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;

/** JSON as RFC 8259 has it: no comments, no trailing commas, no NaN. */
final class JsonNotation implements Notation {

    /** Names are not pooled: a document that makes their hashes collide costs nothing. */
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .disable(TokenStreamFactory.Feature.CANONICALIZE_PROPERTY_NAMES)
            .build();

    private static final List<String> NOT_NUMBERS = List.of("NaN", "-Infinity", "Infinity", "-INF", "INF");

    @Override
    public JsonParser open(SourceText source) {
        return FACTORY.createParser(ObjectReadContext.empty(), source.text());
    }

    @Override
    public int index(SourceText source, JsonParser parser) {
        return (int) parser.currentTokenLocation().getCharOffset();
    }

    @Override
    public void refuseMarks(SourceText source, int index) {
        // JSON has none
    }

    @Override
    public Scalar scalar(SourceText source, JsonParser parser, JsonToken token) {
        int index = index(source, parser);
        if (token == JsonToken.VALUE_STRING) {
            String text = parser.getString();
            boolean verbatim = source.text().startsWith(text, index + 1);
            return new Scalar(source.place(index + 1), ScalarType.TEXT, text, verbatim);
        }
        return new Scalar(source.place(index), type(token), parser.getString(), true);
    }

    private static ScalarType type(JsonToken token) {
        if (token.isNumeric()) {
            return ScalarType.NUMBER;
        }
        return token.isBoolean() ? ScalarType.FLAG : ScalarType.NOTHING;
    }

    @Override
    public RefusedException malformed(SourceText source, JacksonException cause) {
        String text = source.text();
        int index = faultIndex(source, cause);
        if (cause instanceof StreamConstraintsException) {
            return refusal(source, index, "has a name or a number that is too long", "");
        }
        if (index >= text.length()) {
            return refusal(
                    source, text.length(), "ends before it is complete", "a closing bracket for every opening one");
        }
        for (String word : NOT_NUMBERS) {
            if (text.startsWith(word, index - word.length())) {
                return refusal(
                        source, index - word.length(), "has " + word + ", which is not a number", "finite numbers");
            }
        }
        char fault = text.charAt(index);
        String shown = Characters.excerpt(text.substring(index, Math.min(text.length(), index + 1)));
        return refusal(source, index, "cannot be read from \"" + shown + "\" on", hint(fault));
    }

    private static int faultIndex(SourceText source, JacksonException cause) {
        int index = cause.getLocation() == null ? 0 : (int) cause.getLocation().getCharOffset();
        return Math.max(0, Math.min(index, source.text().length()));
    }

    private static String hint(char fault) {
        return switch (fault) {
            case '}', ']' -> "a value after every comma and every colon, and none after the last";
            case '\'' -> "names and texts in double quotation marks";
            case '/', '#' -> "no comments";
            case '\n', '\r', '\t' -> "texts on one line, with \\n for a line break";
            case '{', '[', '"' -> "a comma between values and a colon after a name";
            default -> "names and texts in double quotation marks, numbers, true, false, lists and groups";
        };
    }

    @Override
    public RefusedException trailing(SourceText source, int index) {
        return refusal(source, index, "goes on after its end", "one document in a file");
    }

    private static RefusedException refusal(SourceText source, int index, String problem, String allowed) {
        return Notation.refusal(DocumentFormat.JSON, source, index, problem, allowed);
    }
}
