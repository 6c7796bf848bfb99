package drivetrain.gearing;

/** A range of the transfer case. */
public enum Range {
    /** High range, for the road. */
    HIGH("high"),
    /** Low range, the reduction for crawling. */
    LOW("low");

    private final String label;

    Range(String label) {
        this.label = label;
    }

    /**
     * Returns the word that drivers use.
     *
     * @return the label, in lower case
     */
    public String label() {
        return label;
    }
}
