package drivetrain.report;

import drivetrain.finding.Working;

/**
 * How an answer was worked out: inputs, formulas with their results, sources.
 *
 * @param key the machine name; a report with several workings gives each a name of its own
 * @param working the working
 */
public record Steps(String key, Working working) implements Block {

    /**
     * Checks the key.
     *
     * @throws IllegalArgumentException if the key is no machine name
     */
    public Steps {
        MachineName.require(key);
    }

    /**
     * Makes a block with the key {@code working}.
     *
     * @param working the working
     * @return the block
     */
    public static Steps of(Working working) {
        return new Steps("working", working);
    }

    @Override
    public <R> R layOut(Layout<R> layout) {
        return layout.steps(this);
    }
}
