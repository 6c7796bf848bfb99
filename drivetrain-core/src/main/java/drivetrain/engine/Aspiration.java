package drivetrain.engine;

/** How an engine gets its air. */
public enum Aspiration {
    /** By its own pistons. */
    NATURAL("natural", "naturally aspirated"),
    /** From a compressor that the crankshaft drives. */
    SUPERCHARGED("supercharged", "supercharged"),
    /** From a compressor that the exhaust drives. */
    TURBOCHARGED("turbocharged", "turbocharged");

    private final String word;
    private final String label;

    Aspiration(String word, String label) {
        this.word = word;
        this.label = label;
    }

    /**
     * Returns the one word by which it is written in a catalog and in an engine's literal text.
     *
     * @return the word
     */
    public String word() {
        return word;
    }

    /**
     * Returns the words of the trade for it.
     *
     * @return the label, such as {@code naturally aspirated}
     */
    public String label() {
        return label;
    }
}
