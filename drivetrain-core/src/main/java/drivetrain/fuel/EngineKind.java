package drivetrain.fuel;

/** What kind of engine burns the fuel, as far as its consumption depends on it. */
public enum EngineKind {
    /** Spark ignition, naturally aspirated. */
    SPARK_NATURAL("spark-natural", "spark ignition, naturally aspirated"),
    /** Spark ignition, with a compressor that the crankshaft drives. */
    SPARK_SUPERCHARGED("spark-supercharged", "spark ignition, supercharged"),
    /** Spark ignition, with a compressor that the exhaust drives. */
    SPARK_TURBOCHARGED("spark-turbocharged", "spark ignition, turbocharged"),
    /** Compression ignition. */
    DIESEL("diesel", "diesel");

    private final String word;
    private final String label;

    EngineKind(String word, String label) {
        this.word = word;
        this.label = label;
    }

    /**
     * Returns the word by which the table of consumption calls it.
     *
     * @return the word
     */
    public String word() {
        return word;
    }

    /**
     * Returns the words of the trade for it.
     *
     * @return the label
     */
    public String label() {
        return label;
    }
}
