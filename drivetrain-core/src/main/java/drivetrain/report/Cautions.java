package drivetrain.report;

import drivetrain.finding.Caution;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * The warnings that belong to the answer, each once.
 *
 * @param key the machine name
 * @param cautions the cautions in reading order
 */
public record Cautions(String key, List<Caution> cautions) implements Block {

    /**
     * Copies, keeping equal cautions once.
     *
     * @throws IllegalArgumentException if the key is no machine name
     */
    public Cautions {
        MachineName.require(key);
        cautions = List.copyOf(new LinkedHashSet<>(cautions));
    }

    /**
     * Makes a block with the key {@code cautions}.
     *
     * @param cautions the cautions in reading order
     * @return the block
     */
    public static Cautions of(Collection<Caution> cautions) {
        return new Cautions("cautions", List.copyOf(cautions));
    }

    @Override
    public <R> R layOut(Layout<R> layout) {
        return layout.cautions(this);
    }
}
