package drivetrain.report;

/** One part of a report. Each kind says what it means; how it looks is up to the format. */
public sealed interface Block permits Sentence, Grid, Facts, Notes, Verdicts, Steps, Cautions, Drawing {

    /**
     * Returns the machine name of the block.
     *
     * @return a lower-case letter, then letters and digits; unique in its report
     */
    String key();

    /**
     * Handles the block by its kind.
     *
     * @param layout what to do with each kind
     * @param <R> the type of the result
     * @return the result
     */
    <R> R layOut(Layout<R> layout);

    /**
     * What to do with each kind of block.
     *
     * @param <R> the type of the result
     */
    interface Layout<R> {

        /**
         * Handles a sentence.
         *
         * @param block the block
         * @return the result
         */
        R sentence(Sentence block);

        /**
         * Handles a table.
         *
         * @param block the block
         * @return the result
         */
        R grid(Grid block);

        /**
         * Handles names with values.
         *
         * @param block the block
         * @return the result
         */
        R facts(Facts block);

        /**
         * Handles assumptions.
         *
         * @param block the block
         * @return the result
         */
        R notes(Notes block);

        /**
         * Handles findings.
         *
         * @param block the block
         * @return the result
         */
        R verdicts(Verdicts block);

        /**
         * Handles a working.
         *
         * @param block the block
         * @return the result
         */
        R steps(Steps block);

        /**
         * Handles cautions.
         *
         * @param block the block
         * @return the result
         */
        R cautions(Cautions block);

        /**
         * Handles a drawing.
         *
         * @param block the block
         * @return the result
         */
        R drawing(Drawing block);
    }
}
