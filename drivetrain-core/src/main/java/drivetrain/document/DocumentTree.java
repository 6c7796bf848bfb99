package drivetrain.document;

import drivetrain.document.Node.Entry;
import drivetrain.document.Node.Group;
import drivetrain.document.Node.Items;
import drivetrain.document.Node.Scalar;
import drivetrain.document.Node.ScalarType;
import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/** Reads a text to a tree whose values know their places; refuses fields given twice and whatever goes over {@link Limits}. */
final class DocumentTree {

    private final SourceText source;
    private final Notation notation;
    private final JsonParser parser;
    private int values;

    private DocumentTree(SourceText source, Notation notation, JsonParser parser) {
        this.source = source;
        this.notation = notation;
        this.parser = parser;
    }

    /**
     * Reads a whole text.
     *
     * @throws RefusedException if it is not one well-formed document within the limits
     */
    static Node read(SourceText source, DocumentFormat format) {
        Notation notation = Notation.of(format);
        try (JsonParser parser = notation.open(source)) {
            return new DocumentTree(source, notation, parser).root();
        } catch (JacksonException e) {
            throw notation.malformed(source, e);
        }
    }

    private Node root() {
        JsonToken first = parser.nextToken();
        if (first == null) {
            throw source.refusal(0, "is empty", "a catalog or an order");
        }
        Node root = node(first, 1);
        if (parser.nextToken() != null) {
            throw notation.trailing(source, notation.index(source, parser));
        }
        return root;
    }

    private Node node(JsonToken token, int depth) {
        int index = notation.index(source, parser);
        notation.refuseMarks(source, index);
        if (++values > Limits.VALUES) {
            throw source.refusal(
                    index, "has more than " + Limits.VALUES + " values", "a shelf that is split over several files");
        }
        if (token.isScalarValue()) {
            return checked(notation.scalar(source, parser, token));
        }
        if (depth > Limits.DEPTH) {
            throw source.refusal(index, "is nested deeper than " + Limits.DEPTH + " levels", "");
        }
        return token == JsonToken.START_ARRAY ? items(index, depth) : group(index, depth);
    }

    private Items items(int index, int depth) {
        List<Node> items = new ArrayList<>();
        for (JsonToken next = next(); next != JsonToken.END_ARRAY; next = next()) {
            items.add(node(next, depth + 1));
        }
        return new Items(source.place(index), List.copyOf(items));
    }

    private Group group(int index, int depth) {
        Map<String, Entry> entries = new LinkedHashMap<>();
        while (next() != JsonToken.END_OBJECT) {
            int nameIndex = notation.index(source, parser);
            notation.refuseMarks(source, nameIndex);
            if (entries.size() == Limits.FIELDS) {
                throw source.refusal(nameIndex, "has more than " + Limits.FIELDS + " fields in one group", "");
            }
            String name = parser.currentName();
            Place place = source.place(nameIndex);
            requireField(name, place, entries);
            entries.put(name, new Entry(place, node(next(), depth + 1)));
        }
        return new Group(source.place(index), Collections.unmodifiableMap(entries));
    }

    private JsonToken next() {
        JsonToken next = parser.nextToken();
        if (next == null) {
            throw source.refusal(source.text().length(), "ends before it is complete", "");
        }
        return next;
    }

    private static void requireField(String name, Place place, Map<String, Entry> entries) {
        Entry before = entries.get(name);
        if (before != null) {
            throw Refusal.of(
                            "field",
                            Characters.excerpt(name),
                            "is given twice, first on line " + before.place().line())
                    .in(place)
                    .asException();
        }
        OptionalInt refused = Characters.firstRefused(name);
        if (refused.isPresent() || name.length() > Limits.LINE_CHARACTERS) {
            throw Refusal.of("field", Characters.excerpt(name), "is not the name of a field")
                    .in(place)
                    .asException();
        }
    }

    private static Scalar checked(Scalar scalar) {
        String text = scalar.text();
        boolean number = scalar.type() == ScalarType.NUMBER;
        int most = number ? Limits.NUMBER_CHARACTERS : Limits.TEXT_CHARACTERS;
        if (text.length() > most) {
            throw Refusal.of(
                            number ? "number" : "text",
                            Characters.excerpt(text),
                            "is longer than " + most + " characters")
                    .in(scalar.place())
                    .asException();
        }
        OptionalInt refused = Characters.firstRefused(text);
        if (refused.isPresent()) {
            String name = Characters.name(text, refused.getAsInt());
            throw Refusal.of("text", Characters.excerpt(text), "has the character " + name)
                    .allowing("printable characters")
                    .in(scalar.place())
                    .asException();
        }
        return scalar;
    }
}
