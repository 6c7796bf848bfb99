package drivetrain.road;

import drivetrain.finding.Finding;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The loads on all parts between engine and wheels.
 *
 * @param parts the loads, engine side first
 */
public record LoadPath(List<PartLoad> parts) {

    /** Copies the list. */
    public LoadPath {
        parts = List.copyOf(parts);
    }

    /**
     * Finds the weakest link.
     *
     * @return the part of which the greatest share of its rating is used; empty where no part has a rating
     */
    public Optional<PartLoad> weakest() {
        return parts.stream()
                .filter(part -> part.used().value().isPresent())
                .max(Comparator.comparingDouble(part -> part.used().orThrow()));
    }

    /**
     * Returns the check of every part.
     *
     * @return one finding for each part
     */
    public List<Finding> findings() {
        return parts.stream().map(PartLoad::finding).toList();
    }
}
