package drivetrain.fuel;

/** What a fuel is made of, which decides how it expands and evaporates. */
public enum FuelFamily {
    /** Gasoline, also with ethanol in it. */
    GASOLINE("gasoline"),
    /** Diesel, which hardly evaporates. */
    DIESEL("diesel");

    private final String word;

    FuelFamily(String word) {
        this.word = word;
    }

    /**
     * Returns the word by which tables and catalogs call it.
     *
     * @return the word
     */
    public String word() {
        return word;
    }
}
