package drivetrain.comparison;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.combination.Specification;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The number that one part would need for a measure to be what is wished, and the parts on the shelf that come nearest on both sides.
 *
 * @param lever the figure that is solved for
 * @param measure the measure
 * @param target what the measure is to be, on its scale
 * @param before the lever's number as it stands
 * @param measured the measure as it stands
 * @param exact the lever's number that gives the target
 * @param achieved the measure that a part with exactly that number gives
 * @param below the part on the shelf that gives the nearest measure below the target
 * @param above the part on the shelf that gives the nearest measure at or above the target
 */
public record Solve(
        Lever lever,
        Measure measure,
        double target,
        double before,
        double measured,
        double exact,
        double achieved,
        Optional<Near> below,
        Optional<Near> above) {

    private static final int MOST_STEPS = 60;
    private static final double PROBE = 1.001;
    private static final double FLAT = 1e-12;
    private static final double SOLVED = 1e-13;
    private static final double ROUND_TRIP = 1e-9;

    /**
     * A part on the shelf.
     *
     * @param name its name
     * @param number the lever's number of it
     * @param measured what the measure is with it
     */
    public record Near(String name, double number, double measured) {}

    /**
     * Solves.
     *
     * @param base the order
     * @param catalog the shelf
     * @param lever the figure to solve for
     * @param measure the measure
     * @param target what it is to be, above zero
     * @return the solution
     * @throws RefusedException if the measure cannot be evaluated, does not depend on the lever, or would need a part that cannot be
     */
    public static Solve of(Specification base, Catalog catalog, Lever lever, Measure measure, double target) {
        Combination combination = Combination.resolve(base, catalog);
        double before = known(lever.number(combination), lever.word());
        double measured = known(measure.of(combination), measure.word());
        if (!(target > 0.0)) {
            throw Refusal.of(measure.word(), Double.toString(target), "cannot be solved for")
                    .allowing("more than 0")
                    .asException();
        }
        Adjusted adjusted = new Adjusted(combination);
        double factor = factor(adjusted, lever, measure, target, measured);
        double achieved = known(measure.of(adjusted.with(Map.of(lever, factor))), measure.word());
        if (!(Math.abs(achieved - target) <= ROUND_TRIP * target)) {
            throw noSolution(measure, target, "no " + lever.meaning() + " gives it");
        }
        List<Near> shelf = shelf(base, catalog, lever, measure);
        return new Solve(
                lever,
                measure,
                target,
                before,
                measured,
                before * factor,
                achieved,
                shelf.stream().filter(near -> near.measured < target).max(Comparator.comparingDouble(Near::measured)),
                shelf.stream().filter(near -> near.measured >= target).min(Comparator.comparingDouble(Near::measured)));
    }

    private static double known(Outcome<Double> number, String what) {
        return number.value()
                .orElseThrow(() -> Refusal.of(
                                what,
                                "",
                                "not evaluated because " + number.reason().orElse("something is missing"))
                        .asException());
    }

    /** The factor on the lever's number; secant steps in logarithms, of which one is enough for a product. */
    private static double factor(Adjusted adjusted, Lever lever, Measure measure, double target, double measured) {
        double x = 0.0;
        double y = Math.log(measured / target);
        double slope = (log(adjusted, lever, measure, target, Math.log(PROBE)) - y) / Math.log(PROBE);
        for (int step = 0; step < MOST_STEPS && Math.abs(y) > SOLVED; step++) {
            if (Math.abs(slope) < FLAT) {
                throw noSolution(measure, target, "it does not depend on the " + lever.meaning());
            }
            double next = x - y / slope;
            double nextY = log(adjusted, lever, measure, target, next);
            slope = next == x ? slope : (nextY - y) / (next - x);
            x = next;
            y = nextY;
        }
        return Math.exp(x);
    }

    private static double log(Adjusted adjusted, Lever lever, Measure measure, double target, double x) {
        Combination tried;
        try {
            tried = adjusted.with(Map.of(lever, Math.exp(x)));
        } catch (RefusedException impossible) {
            Refusal why = impossible.refusal();
            String given = why.given().isEmpty() ? "" : " (" + why.given() + ")";
            throw noSolution(
                    measure, target, "the " + lever.meaning() + " that gives it" + given + " " + why.problem());
        }
        return Math.log(known(measure.of(tried), measure.word()) / target);
    }

    private static RefusedException noSolution(Measure measure, double target, String why) {
        return Refusal.of(measure.word(), measure.scale().figure(target).digits(UnitSystem.US), why)
                .asException();
    }

    private static List<Near> shelf(Specification base, Catalog catalog, Lever lever, Measure measure) {
        List<Near> near = new ArrayList<>();
        Place place = lever == Lever.AXLE ? Place.AXLES : new Place(lever.slot().word(), List.of(lever.slot()));
        for (Part<?> part : catalog.parts(place.kind())) {
            Combination with = Combination.resolve(place.put(base, part.name()), catalog);
            lever.number(with)
                    .value()
                    .ifPresent(number -> measure.of(with)
                            .value()
                            .ifPresent(measured -> near.add(new Near(part.name(), number, measured))));
        }
        return near;
    }
}
