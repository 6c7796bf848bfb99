package drivetrain.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The order of the axes for counting.
 *
 * <p>Last comes a long axis on which many constraints turn into an interval. Ahead of it stand the axes of many constraints, the short ones first, so that
 * most constraints are settled before the axes of few constraints are looked at.
 */
final class CountOrder {

    private CountOrder() {}

    static List<Axis> of(List<Axis> used, Terms terms) {
        List<Axis> ordered = new ArrayList<>(used);
        ordered.sort(
                Comparator.<Axis>comparingInt(axis -> -constraints(axis, terms)).thenComparing(Axis.BY_SIZE));
        ordered.stream()
                .filter(axis -> SortedRow.fits(axis, terms))
                .max(Comparator.comparingDouble(axis -> constraints(axis, terms) * Math.log(1.0 + axis.size())))
                .ifPresent(last -> {
                    ordered.remove(last);
                    ordered.add(last);
                });
        return ordered;
    }

    private static int constraints(Axis axis, Terms terms) {
        return Integer.bitCount(axis.moved(terms));
    }
}
