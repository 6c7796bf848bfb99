package drivetrain.document;

import drivetrain.document.Node.Scalar;
import drivetrain.document.Node.ScalarType;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Quantity;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A value that is about to be read, with the name of its field. Every method reads one kind of value and refuses all others with the
 * place of the value; where a text is refused by the part that it describes, the column is that of the fault within the text.
 *
 * @param field the name of the field
 * @param node the value
 */
record Value(String field, Node node) {

    /** Reads a text on one line. */
    String line() {
        String text = text();
        if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0) {
            throw refusal(text, "goes over several lines").allowing("one line").asException();
        }
        if (text.length() > Limits.LINE_CHARACTERS) {
            throw refusal(text, "is longer than " + Limits.LINE_CHARACTERS + " characters")
                    .asException();
        }
        return text;
    }

    /** Reads a text of one or more lines. */
    String text() {
        String text = scalar(ScalarType.TEXT, "a text; in quotation marks if it looks like something else")
                .text();
        if (text.isBlank()) {
            throw refusal("", "is empty").allowing("a text, or no such field").asException();
        }
        if (text.indexOf('\t') >= 0) {
            throw refusal(text, "has a tab").allowing("spaces").asException();
        }
        return text;
    }

    /** Reads a text with a unit. */
    <Q extends Quantity<Q>> Q quantity(Kind<Q> kind) {
        if (node.what().equals(ScalarType.NUMBER.what())) {
            throw refusal(shown(), "has no unit")
                    .allowing("a number with its unit, " + kind.allowed())
                    .asException();
        }
        return literal(kind::parse);
    }

    /** Reads a text by a part's own reader. */
    <T> T literal(Function<String, T> reader) {
        return located(line(), reader);
    }

    /** Reads a text or a bare number by a part's own reader, which is given the number as it is written. */
    <T> T literalOrNumber(Function<String, T> reader) {
        boolean number = node instanceof Scalar scalar && scalar.type() == ScalarType.NUMBER;
        return number ? located(shown(), reader) : literal(reader);
    }

    /** Reads a bare number. */
    double number() {
        String digits = scalar(ScalarType.NUMBER, "a bare number").text();
        double number = Double.parseDouble(digits);
        if (!Double.isFinite(number)) {
            throw refusal(digits, "is too large a number").asException();
        }
        return number;
    }

    /** Reads a whole bare number. */
    int wholeNumber() {
        double number = number();
        if (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE) {
            throw refusal(shown(), "is not a whole number").asException();
        }
        return (int) number;
    }

    /** Reads true or false. */
    boolean flag() {
        return scalar(ScalarType.FLAG, "true or false").text().equals("true");
    }

    /** Reads one of a few words. */
    <E extends Enum<E>> E choice(Class<E> type, Function<E, String> word) {
        List<E> constants = Arrays.asList(type.getEnumConstants());
        List<String> words = constants.stream().map(word).toList();
        String given = line();
        int index = words.indexOf(given);
        if (index < 0) {
            throw refusal(given, "is not one of the words that are known here")
                    .allowing(String.join(", ", words))
                    .suggesting(NearNames.of(given, words))
                    .asException();
        }
        return constants.get(index);
    }

    /** Reads a list of at most so many items. */
    List<Value> items(int most) {
        if (!(node instanceof Node.Items list)) {
            throw wrongKind("a list");
        }
        if (list.items().isEmpty()) {
            throw refusal("", "is an empty list")
                    .allowing("at least one item, or no such field")
                    .asException();
        }
        if (list.items().size() > most) {
            throw refusal("", "has more than " + most + " items").asException();
        }
        return list.items().stream().map(item -> new Value(field, item)).collect(Collectors.toUnmodifiableList());
    }

    /** Reads a group whose names say something themselves. */
    Map<String, Node.Entry> group(String allowed) {
        if (!(node instanceof Node.Group group)) {
            throw wrongKind(allowed);
        }
        return group.entries();
    }

    /** Reads a group of fields. */
    Fields fields(String what, List<String> known) {
        if (!(node instanceof Node.Group group)) {
            throw wrongKind("a group of fields: " + String.join(", ", known));
        }
        return Fields.of(what, group, known);
    }

    /**
     * Makes a part of what the value says and puts a place to its refusal: that of the text or number within the value that the refusal quotes,
     * else that of the value.
     */
    <T> T made(Supplier<T> maker) {
        try {
            return maker.get();
        } catch (RefusedException e) {
            throw e.refusal().place().isPresent()
                    ? e
                    : e.in(quoted(node, e.refusal().given()).orElse(node.place()));
        }
    }

    private static Optional<Place> quoted(Node node, String given) {
        if (node instanceof Scalar scalar) {
            return !given.isEmpty() && scalar.text().equals(given) ? Optional.of(scalar.place()) : Optional.empty();
        }
        Stream<Node> inner = node instanceof Node.Items list
                ? list.items().stream()
                : ((Node.Group) node).entries().values().stream().map(Node.Entry::value);
        return inner.map(child -> quoted(child, given))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** Runs a reader on a text and puts the place of the fault to its refusal. */
    private <T> T located(String text, Function<String, T> reader) {
        try {
            return reader.apply(text);
        } catch (RefusedException e) {
            throw e.refusal().place().isPresent() ? e : e.in(placeOfFault(text, e.refusal()));
        }
    }

    private Place placeOfFault(String text, Refusal refusal) {
        int start = refusal.given().isEmpty() ? -1 : text.indexOf(refusal.given());
        if (node instanceof Scalar scalar && refusal.position().isPresent() && start >= 0) {
            return scalar.placeOf(start + refusal.position().getAsInt());
        }
        return node.place();
    }

    private Scalar scalar(ScalarType type, String allowed) {
        if (node instanceof Scalar scalar && scalar.type() == type) {
            return scalar;
        }
        throw wrongKind(allowed);
    }

    private RefusedException wrongKind(String allowed) {
        return refusal(shown(), "is " + node.what()).allowing(allowed).asException();
    }

    private String shown() {
        return node instanceof Scalar scalar ? scalar.text() : "";
    }

    /** Starts a refusal of this value. */
    Refusal refusal(String given, String problem) {
        return Refusal.of(field, Characters.excerpt(given), problem).in(node.place());
    }
}
