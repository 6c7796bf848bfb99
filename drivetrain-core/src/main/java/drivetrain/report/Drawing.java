package drivetrain.report;

/**
 * Curves in one field.
 *
 * @param key the machine name
 * @param plot the curves
 */
public record Drawing(String key, LinePlot plot) implements Block {

    /**
     * Checks the key.
     *
     * @throws IllegalArgumentException if the key is no machine name
     */
    public Drawing {
        MachineName.require(key);
    }

    /**
     * Makes a block with the key {@code plot}.
     *
     * @param plot the curves
     * @return the block
     */
    public static Drawing of(LinePlot plot) {
        return new Drawing("plot", plot);
    }

    @Override
    public <R> R layOut(Layout<R> layout) {
        return layout.drawing(this);
    }
}
