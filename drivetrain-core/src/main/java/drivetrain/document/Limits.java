package drivetrain.document;

/** How much a document may hold. Far more than a shop's shelf needs, and little enough to be refused at once. */
final class Limits {

    /** Bytes of one document. */
    static final int DOCUMENT_BYTES = 8_000_000;

    /** Characters of one text. */
    static final int TEXT_CHARACTERS = 100_000;

    /** Characters of a text that must stand on one line: a value with its unit, a literal, a description. */
    static final int LINE_CHARACTERS = 400;

    /** Characters of a number. */
    static final int NUMBER_CHARACTERS = 40;

    /** Lists and groups of fields within each other. */
    static final int DEPTH = 64;

    /** Texts, numbers, lists and groups of fields in one document, together. */
    static final int VALUES = 400_000;

    /** Fields in one group. */
    static final int FIELDS = 200;

    /** Parts in one catalog. */
    static final int PARTS = 100_000;

    private Limits() {}
}
