package drivetrain.document;

import drivetrain.refusal.Refusal;
import java.util.List;

/** The fields with which every document begins: what it is, by which version of the description, and what it is called. */
final class DocumentHead {

    static final String DOCUMENT = "document";
    static final String VERSION = "version";
    static final String TITLE = "title";

    /** The fields of the head. */
    static final List<String> FIELDS = List.of(DOCUMENT, VERSION, TITLE);

    /** The version that this library reads and writes. */
    static final int CURRENT = 1;

    private DocumentHead() {}

    /** Returns the fields of a document after checking that it is of the kind that is wanted. */
    static Fields require(Node root, String kind, String what, List<String> known) {
        if (!(root instanceof Node.Group group)) {
            throw Refusal.of(
                            "document",
                            "",
                            "is not " + (what.equals("order") ? "an order" : "a " + what) + " but " + root.what())
                    .allowing("fields such as \"" + DOCUMENT + ": " + kind + "\"")
                    .in(root.place())
                    .asException();
        }
        requireKind(group, kind);
        Fields fields = Fields.of(what, group, known);
        fields.required(VERSION, DocumentHead::requireVersion);
        return fields;
    }

    /** Told before anything else, so that an order that is opened as a catalog is not refused for its fields. */
    private static void requireKind(Node.Group group, String kind) {
        Node.Entry entry = group.entries().get(DOCUMENT);
        if (entry == null) {
            throw Refusal.of("document", "", "does not say what it is")
                    .allowing("\"" + DOCUMENT + ": " + kind + "\"")
                    .in(group.place())
                    .asException();
        }
        Value value = new Value(DOCUMENT, entry.value());
        String given = value.line();
        if (!given.equals(kind)) {
            throw value.refusal(given, "is not the kind of document that is wanted here")
                    .allowing(kind)
                    .asException();
        }
    }

    private static int requireVersion(Value value) {
        int version = value.wholeNumber();
        if (version != CURRENT) {
            throw value.refusal(Integer.toString(version), "is a version that is not known")
                    .allowing(Integer.toString(CURRENT))
                    .asException();
        }
        return version;
    }
}
