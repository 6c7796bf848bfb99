package drivetrain.report;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The answer to one question, ready to be written out in any format.
 *
 * @param question the machine name of the question, such as {@code cruise}: a lower-case letter, then letters and digits
 * @param blocks what the answer consists of, in reading order; each has a key of its own
 */
public record Report(String question, List<Block> blocks) {

    /** Names that files give to the question and the unit system; no block may have them. */
    private static final List<String> TAKEN = List.of("question", "units");

    /**
     * Copies and checks.
     *
     * @throws IllegalArgumentException if the question is no machine name, if two blocks have one key, or if a block has the key
     *     {@code question} or {@code units}
     */
    public Report {
        MachineName.require(question);
        blocks = List.copyOf(blocks);
        Set<String> keys = new HashSet<>(TAKEN);
        for (Block block : blocks) {
            if (!keys.add(block.key())) {
                throw new IllegalArgumentException(
                        "the key " + block.key() + " of a block of " + question + " is taken");
            }
        }
    }

    /**
     * Makes a report.
     *
     * @param question the machine name of the question
     * @param blocks what the answer consists of, in reading order
     * @return the report
     * @throws IllegalArgumentException if the question is no machine name or if two blocks have one key
     */
    public static Report of(String question, Block... blocks) {
        return new Report(question, List.of(blocks));
    }
}
