package drivetrain.tire;

/** What an overall diameter rests on. */
public enum DiameterBasis {
    /** Measured, or published by the maker, and given with the tire. */
    GIVEN("given with the tire"),
    /** Rim diameter plus twice the section height, from a metric size. */
    SIZE_FORMULA("computed from the size"),
    /** A row of the table of sizes. */
    SIZE_TABLE("from the table of sizes"),
    /** The nominal diameter of a flotation size, less half an inch. */
    NOMINAL_LESS_HALF_INCH("nominal diameter less half an inch");

    private final String label;

    DiameterBasis(String label) {
        this.label = label;
    }

    /**
     * Returns the basis in words.
     *
     * @return the label
     */
    public String label() {
        return label;
    }
}
