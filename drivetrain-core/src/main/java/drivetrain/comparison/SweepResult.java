package drivetrain.comparison;

import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import java.util.List;

/**
 * What a sweep found.
 *
 * @param sweep the sweep
 * @param combinations how many packages there are
 * @param passing how many keep every wish
 * @param rows the best of them, best first
 * @param alone how many packages keep each wish by itself; empty unless none keeps all
 * @param conflict which wishes cannot be kept together; empty unless no package keeps all
 */
public record SweepResult(
        Sweep sweep, long combinations, long passing, List<Row> rows, List<Alone> alone, Conflict conflict) {

    /** Copies the lists. */
    public SweepResult {
        rows = List.copyOf(rows);
        alone = List.copyOf(alone);
    }

    /**
     * One package.
     *
     * @param parts what is chosen from each list
     * @param combination the package
     * @param numbers the measures that are shown, as the assessment of this package gives them
     * @param behind by which fraction its score is behind the first one's
     */
    public record Row(List<String> parts, Combination combination, List<Outcome<Double>> numbers, double behind) {

        /** Copies the lists. */
        public Row {
            parts = List.copyOf(parts);
            numbers = List.copyOf(numbers);
        }
    }

    /**
     * How many packages keep one wish.
     *
     * @param wish the wish
     * @param passing the count
     */
    public record Alone(Wish wish, long passing) {}
}
