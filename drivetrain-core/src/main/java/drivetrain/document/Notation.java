package drivetrain.document;

import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/** What differs between the notations when one and the same tree is read from them. */
interface Notation {

    /** Returns the notation of a format. */
    static Notation of(DocumentFormat format) {
        return format == DocumentFormat.YAML ? new YamlNotation() : new JsonNotation();
    }

    /** Opens a text; refuses what can be told before the first value. */
    JsonParser open(SourceText source);

    /** Returns the index of the current token. */
    int index(SourceText source, JsonParser parser);

    /** Refuses a mark of the notation that documents do not use, at the beginning of a value or of a field's name. */
    void refuseMarks(SourceText source, int index);

    /** Returns the current token as a scalar. */
    Node.Scalar scalar(SourceText source, JsonParser parser, JsonToken token);

    /** Says in plain words why the text is not well-formed. */
    RefusedException malformed(SourceText source, JacksonException cause);

    /** Refuses what follows the first value. */
    RefusedException trailing(SourceText source, int index);

    /** Returns the refusal of a document in this notation. */
    static RefusedException refusal(
            DocumentFormat format, SourceText source, int index, String problem, String allowed) {
        return Refusal.of(format.label() + " document", "", problem)
                .allowing(allowed)
                .in(source.place(index))
                .asException();
    }
}
