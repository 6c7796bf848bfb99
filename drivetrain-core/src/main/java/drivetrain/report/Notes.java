package drivetrain.report;

import drivetrain.finding.Assumption;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * What the answer rests on. Equal assumptions are kept once; a flagged one is marked in words.
 *
 * @param key the machine name
 * @param assumptions the assumptions in reading order, each once
 */
public record Notes(String key, List<Assumption> assumptions) implements Block {

    /**
     * Copies, keeping equal assumptions once.
     *
     * @throws IllegalArgumentException if the key is no machine name
     */
    public Notes {
        MachineName.require(key);
        assumptions = List.copyOf(new LinkedHashSet<>(assumptions));
    }

    /**
     * Makes a block with the key {@code assumptions}.
     *
     * @param assumptions the assumptions in reading order
     * @return the block
     */
    public static Notes of(Collection<Assumption> assumptions) {
        return new Notes("assumptions", List.copyOf(assumptions));
    }

    @Override
    public <R> R layOut(Layout<R> layout) {
        return layout.notes(this);
    }
}
