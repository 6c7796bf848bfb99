package drivetrain.comparison;

import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * How much each measure moves when one figure of a part grows by one percent and nothing else changes.
 *
 * @param levers the figures that the package has
 * @param rows the measures that the package has
 */
public record Sensitivity(List<Lever> levers, List<Row> rows) {

    /** By how much a figure grows. */
    public static final double GROWTH = 0.01;

    /**
     * One measure.
     *
     * @param measure the measure
     * @param number its number as it stands
     * @param changes for each lever the change as a fraction of that number, or why it is not known
     */
    public record Row(Measure measure, double number, List<Outcome<Double>> changes) {

        /** Copies the list. */
        public Row {
            changes = List.copyOf(changes);
        }
    }

    /** Copies the lists. */
    public Sensitivity {
        levers = List.copyOf(levers);
        rows = List.copyOf(rows);
    }

    /**
     * Works the changes out.
     *
     * @param combination the package
     * @param measures the measures; those that cannot be evaluated are left out
     * @return the changes
     */
    public static Sensitivity of(Combination combination, List<Measure> measures) {
        Adjusted adjusted = new Adjusted(combination);
        List<Lever> levers = new ArrayList<>();
        List<Outcome<Combination>> grown = new ArrayList<>();
        for (Lever lever : Lever.values()) {
            if (lever.number(combination).value().isPresent()) {
                levers.add(lever);
                grown.add(grow(adjusted, lever));
            }
        }
        List<Row> rows = new ArrayList<>();
        for (Measure measure : measures) {
            measure.of(combination)
                    .value()
                    .ifPresent(number -> rows.add(new Row(
                            measure,
                            number,
                            grown.stream()
                                    .map(with -> with.then(measure::of).map(after -> after / number - 1.0))
                                    .toList())));
        }
        return new Sensitivity(levers, rows);
    }

    private static Outcome<Combination> grow(Adjusted adjusted, Lever lever) {
        try {
            return Outcome.of(adjusted.with(Map.of(lever, 1.0 + GROWTH)));
        } catch (RefusedException impossible) {
            return Outcome.notEvaluated(
                    "one percent more cannot be: " + impossible.refusal().problem());
        }
    }
}
