package drivetrain.engine;

/** What lights the charge. */
public enum Ignition {
    /** A spark: gasoline, gas, ethanol. */
    SPARK("spark"),
    /** The heat of compression: diesel. */
    COMPRESSION("compression");

    private final String word;

    Ignition(String word) {
        this.word = word;
    }

    /**
     * Returns the one word by which it is written in a catalog.
     *
     * @return the word
     */
    public String word() {
        return word;
    }
}
