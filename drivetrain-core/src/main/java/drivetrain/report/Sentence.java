package drivetrain.report;

/**
 * One sentence that can be read out as it stands. The first sentence of a report is the answer.
 *
 * @param key the machine name
 * @param text the sentence, with its full stop
 */
public record Sentence(String key, String text) implements Block {

    /**
     * Checks the key.
     *
     * @throws IllegalArgumentException if the key is no machine name
     */
    public Sentence {
        MachineName.require(key);
    }

    /**
     * Makes the sentence that answers the question, with the key {@code answer}.
     *
     * @param text the sentence
     * @return the block
     */
    public static Sentence answer(String text) {
        return new Sentence("answer", text);
    }

    @Override
    public <R> R layOut(Layout<R> layout) {
        return layout.sentence(this);
    }
}
