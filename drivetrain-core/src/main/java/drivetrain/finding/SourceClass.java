package drivetrain.finding;

/** How good the source of a figure or a rule is, best first. */
public enum SourceClass {
    /** A published standard or regulation, with number and edition. */
    STANDARD("standard"),
    /** A published book or paper, with author, edition and place. */
    HANDBOOK("handbook"),
    /** Follows from a definition or from first principles; the derivation stands in the package documentation. */
    DERIVED("derived"),
    /** A rule of the trade with no published source. */
    COMMON_PRACTICE("common practice"),
    /** Recalled and not looked up. */
    FROM_MEMORY("from memory"),
    /** Given by the user or by a shop's own catalog. */
    GIVEN("given");

    private final String label;

    SourceClass(String label) {
        this.label = label;
    }

    /**
     * Returns the class as tables and screens write it.
     *
     * @return the label, in lower case
     */
    public String label() {
        return label;
    }

    /**
     * Tells whether a figure of this class must be flagged where it decides an answer.
     *
     * @return true for common practice and from memory
     */
    public boolean isUncertain() {
        return this == COMMON_PRACTICE || this == FROM_MEMORY;
    }
}
