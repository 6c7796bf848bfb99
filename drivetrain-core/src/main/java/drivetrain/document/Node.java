package drivetrain.document;

import drivetrain.refusal.Place;
import java.util.List;
import java.util.Map;

/** A value of a document with its place: the tree that both notations are read to. */
sealed interface Node {

    /** Returns where the value begins. */
    Place place();

    /** Returns what the value is, for a refusal: {@code a number}, {@code a list}. */
    String what();

    /**
     * A text, number, true or false, or nothing.
     *
     * @param place where the text itself begins, behind an opening quotation mark
     * @param type what it is
     * @param text the text, or the number as written
     * @param verbatim true if the text stands in the document as it is, so that an index in it leads to a column
     */
    record Scalar(Place place, ScalarType type, String text, boolean verbatim) implements Node {
        @Override
        public String what() {
            return type.what();
        }

        /** Returns the place of an index in the text. */
        Place placeOf(int index) {
            return verbatim ? new Place(place.source(), place.line(), place.column() + index) : place;
        }
    }

    /** What a scalar is. */
    enum ScalarType {
        TEXT("a text"),
        NUMBER("a bare number"),
        FLAG("true or false"),
        NOTHING("empty");

        private final String what;

        ScalarType(String what) {
            this.what = what;
        }

        String what() {
            return what;
        }
    }

    /**
     * A list.
     *
     * @param place where it begins
     * @param items its items in order
     */
    record Items(Place place, List<Node> items) implements Node {
        @Override
        public String what() {
            return "a list";
        }
    }

    /**
     * A group of fields.
     *
     * @param place where it begins
     * @param entries the fields in order, by their names
     */
    record Group(Place place, Map<String, Entry> entries) implements Node {
        @Override
        public String what() {
            return "a group of fields";
        }
    }

    /**
     * A field.
     *
     * @param place where its name begins
     * @param value its value
     */
    record Entry(Place place, Node value) {}
}
