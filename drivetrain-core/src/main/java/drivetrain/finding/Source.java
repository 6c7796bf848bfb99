package drivetrain.finding;

import org.jspecify.annotations.Nullable;

/**
 * Where a rule or a figure comes from.
 *
 * @param kind how good the source is
 * @param citation the source itself: number, author, edition, table or equation
 */
public record Source(SourceClass kind, String citation) {

    /**
     * Checks the citation.
     *
     * @throws IllegalArgumentException if the citation is blank
     */
    public Source {
        if (citation.isBlank()) {
            throw new IllegalArgumentException("a source needs a citation");
        }
    }

    /**
     * Names a published standard or regulation.
     *
     * @param citation number, edition, clause
     * @return the source
     */
    public static Source standard(String citation) {
        return new Source(SourceClass.STANDARD, citation);
    }

    /**
     * Names a published book or paper.
     *
     * @param citation author, title, edition, place
     * @return the source
     */
    public static Source handbook(String citation) {
        return new Source(SourceClass.HANDBOOK, citation);
    }

    /**
     * Names the definition or principle that a rule follows from.
     *
     * @param from the definition
     * @return the source
     */
    public static Source derived(String from) {
        return new Source(SourceClass.DERIVED, from);
    }

    /**
     * Names a rule of the trade without a published source.
     *
     * @param rule the rule
     * @return the source
     */
    public static Source commonPractice(String rule) {
        return new Source(SourceClass.COMMON_PRACTICE, rule);
    }

    /**
     * Names a source that was recalled and not looked up.
     *
     * @param citation what is recalled
     * @return the source
     */
    public static Source fromMemory(String citation) {
        return new Source(SourceClass.FROM_MEMORY, citation);
    }

    /**
     * Names the user, the order or the catalog that gave a figure.
     *
     * @param by who gave it
     * @return the source
     */
    public static Source given(String by) {
        return new Source(SourceClass.GIVEN, by);
    }

    /**
     * Returns the citation with its class.
     *
     * @return the text, such as {@code UN Regulation 39, 5.3 [standard]}
     */
    @Override
    public String toString() {
        return citation + " [" + kind.label() + "]";
    }

    /**
     * Compares all components. Written out, because the equality that a record comes with costs its first caller some 20 ms.
     *
     * @param other any object
     * @return true if all components are equal
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Source that && kind == that.kind && citation.equals(that.citation);
    }

    /**
     * Returns a hash of all components.
     *
     * @return the hash
     */
    @Override
    public int hashCode() {
        return 31 * kind.hashCode() + citation.hashCode();
    }
}
