package drivetrain.comparison;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.driveshaft.Driveshaft;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Assumption;
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
 * @param assumptions what the part of the solution is taken to have in common with the one that is chosen
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
        Optional<Near> above,
        List<Assumption> assumptions) {

    /** How near to what is wished the measure of the solution must come. */
    static final double ROUND_TRIP = 1e-9;

    /** Copies the list. */
    public Solve {
        assumptions = List.copyOf(assumptions);
    }

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
        double factor = new FactorSearch(adjusted, lever, before, measure, target).find();
        Combination solved = adjusted.with(Map.of(lever, factor));
        double achieved = known(measure.of(solved), measure.word());
        if (!(Math.abs(achieved - target) <= ROUND_TRIP * target)) {
            throw noSolution(measure, target, "no " + lever.meaning() + " gives it");
        }
        List<Near> shelf = lever == Lever.SHAFT_DIAMETER
                ? stock(adjusted, combination, lever, measure)
                : shelf(base, catalog, lever, measure);
        return new Solve(
                lever,
                measure,
                target,
                before,
                measured,
                known(lever.number(solved), lever.word()),
                achieved,
                shelf.stream().filter(near -> near.measured < target).max(Comparator.comparingDouble(Near::measured)),
                shelf.stream().filter(near -> near.measured >= target).min(Comparator.comparingDouble(Near::measured)),
                lever.assumptions(solved));
    }

    private static double known(Outcome<Double> number, String what) {
        return number.value()
                .orElseThrow(() -> Refusal.of(
                                what,
                                "",
                                "not evaluated because " + number.reason().orElse("something is missing"))
                        .asException());
    }

    private static RefusedException noSolution(Measure measure, double target, String why) {
        return Refusal.of(measure.word(), measure.scale().figure(target).text(UnitSystem.US), why)
                .asException();
    }

    /** The tubes that can be had, each in the shaft as it stands. */
    private static List<Near> stock(Adjusted adjusted, Combination combination, Lever lever, Measure measure) {
        List<Near> near = new ArrayList<>();
        Driveshaft shaft = combination.shaft(ShaftPlace.REAR).needShaft().orThrow();
        for (ShaftTubes.Stocked stocked : ShaftTubes.stocked(shaft)) {
            Combination with = adjusted.put(Slot.REAR_SHAFT, stocked.shaft());
            add(near, stocked.name(), with, lever, measure);
        }
        return near;
    }

    private static void add(List<Near> near, String name, Combination with, Lever lever, Measure measure) {
        lever.number(with)
                .value()
                .ifPresent(number ->
                        measure.of(with).value().ifPresent(measured -> near.add(new Near(name, number, measured))));
    }

    private static List<Near> shelf(Specification base, Catalog catalog, Lever lever, Measure measure) {
        List<Near> near = new ArrayList<>();
        Place place = lever == Lever.AXLE ? Place.AXLES : new Place(lever.slot().word(), List.of(lever.slot()));
        for (Part<?> part : catalog.parts(place.kind())) {
            Combination with = Combination.resolve(place.put(base, part.name()), catalog);
            add(near, part.name(), with, lever, measure);
        }
        return near;
    }
}
