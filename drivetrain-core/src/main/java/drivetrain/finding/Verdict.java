package drivetrain.finding;

/** The verdict of a check, from best to worst. */
public enum Verdict {
    /** The limit is kept. */
    MET("met"),
    /** Something that the check needs is missing. */
    NOT_EVALUATED("not evaluated"),
    /** The limit is kept, or left, by so little that somebody must look. */
    MARGINAL("marginal"),
    /** The limit is exceeded. */
    EXCEEDED("exceeded");

    private final String label;

    Verdict(String label) {
        this.label = label;
    }

    /**
     * Returns the verdict as screens write it.
     *
     * @return the label, in lower case
     */
    public String label() {
        return label;
    }

    /**
     * Returns the worse of two verdicts.
     *
     * @param other another verdict
     * @return the worse one
     */
    public Verdict worse(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
