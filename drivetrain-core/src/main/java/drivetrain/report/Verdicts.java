package drivetrain.report;

import drivetrain.finding.Finding;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * The checks and their verdicts. The verdict is always written as a word, ahead of all else.
 *
 * @param key the machine name
 * @param findings the findings in reading order
 */
public record Verdicts(String key, List<Finding> findings) implements Block {

    /**
     * Copies.
     *
     * @throws IllegalArgumentException if the key is no machine name
     */
    public Verdicts {
        MachineName.require(key);
        findings = List.copyOf(findings);
    }

    /**
     * Makes a block with the key {@code findings}.
     *
     * @param findings the findings; they are put in order, worst verdict first and otherwise as they come
     * @return the block
     */
    public static Verdicts of(Collection<Finding> findings) {
        List<Finding> worstFirst = findings.stream()
                .sorted(Comparator.comparing(Finding::verdict).reversed())
                .toList();
        return new Verdicts("findings", worstFirst);
    }

    @Override
    public <R> R layOut(Layout<R> layout) {
        return layout.verdicts(this);
    }
}
