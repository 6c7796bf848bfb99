package drivetrain.engine;

/** What the engine drives while it is measured. */
public enum Rating {
    /** With the accessories and the exhaust that it has in the vehicle. */
    NET("net"),
    /** Bare, with only what it needs to run: more than it gives in the vehicle. */
    GROSS("gross");

    private final String word;

    Rating(String word) {
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
