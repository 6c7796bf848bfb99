package drivetrain.road;

import drivetrain.finding.Finding;
import java.util.ArrayList;
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
     * Takes the worst of several gears for each part.
     *
     * @param gears the loads on the same parts in each gear, at least one gear; of equal loads the first is kept
     * @return the loads that count
     */
    public static LoadPath worst(List<LoadPath> gears) {
        List<PartLoad> worst = new ArrayList<>(gears.get(0).parts());
        for (LoadPath gear : gears) {
            for (int i = 0; i < worst.size(); i++) {
                worst.set(i, worst.get(i).worse(gear.parts().get(i)));
            }
        }
        return new LoadPath(worst);
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
