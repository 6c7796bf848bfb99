package drivetrain.comparison;

import drivetrain.planner.Figure;
import drivetrain.planner.Objective;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.Refusal;

/**
 * What is wished of a measure when packages are ranked.
 *
 * @param measure the measure
 * @param goal low, high or near a target
 * @param target the target on the scale of the measure; 1 where the goal is not {@link Objective.Goal#NEAREST}
 * @param weight how many percent of an aim of weight 1 one percent of this one is worth
 */
public record Aim(Measure measure, Objective.Goal goal, double target, double weight) {

    private static final double GREATEST_WEIGHT = 1e6;

    /**
     * Checks the numbers.
     *
     * @throws drivetrain.refusal.RefusedException if the weight is not above 0 and at most 1,000,000, or the target not above 0
     */
    public Aim {
        if (!(weight > 0.0 && weight <= GREATEST_WEIGHT)) {
            throw Refusal.of("weight", Double.toString(weight), "is no weight")
                    .allowing("more than 0, at most 1000000")
                    .asException();
        }
        if (!(target > 0.0 && target < Double.POSITIVE_INFINITY)) {
            throw Refusal.of("target", Double.toString(target), "cannot be aimed at")
                    .allowing("more than 0")
                    .asException();
        }
    }

    /**
     * Aims low, or high.
     *
     * @param measure the measure
     * @param goal {@link Objective.Goal#LOWEST} or {@link Objective.Goal#HIGHEST}
     * @return the aim, of weight 1
     */
    public static Aim of(Measure measure, Objective.Goal goal) {
        return new Aim(measure, goal, 1.0, 1.0);
    }

    /**
     * Aims near a target.
     *
     * @param measure the measure
     * @param target the target
     * @return the aim, of weight 1
     * @throws drivetrain.refusal.RefusedException if the target is not above 0
     */
    public static Aim near(Measure measure, double target) {
        return new Aim(measure, Objective.Goal.NEAREST, target, 1.0);
    }

    /**
     * Aims the way that is better.
     *
     * @param measure the measure
     * @return the aim
     * @throws drivetrain.refusal.RefusedException if it depends which way is better
     */
    public static Aim better(Measure measure) {
        return switch (measure.better()) {
            case LOWER -> of(measure, Objective.Goal.LOWEST);
            case HIGHER -> of(measure, Objective.Goal.HIGHEST);
            case NEITHER ->
                throw Refusal.of("figure", measure.word(), "is not better one way or the other by itself")
                        .allowing("lowest or highest ahead of it, or near and a number behind it")
                        .asException();
        };
    }

    /**
     * Weighs the aim.
     *
     * @param other the weight
     * @return a copy with that weight
     * @throws drivetrain.refusal.RefusedException if it is no weight
     */
    public Aim weighing(double other) {
        return new Aim(measure, goal, target, other);
    }

    Objective objective(Figure figure) {
        return new Objective(figure, goal, weight, target);
    }

    /**
     * Says the aim.
     *
     * @param units the units
     * @return the words, such as {@code lowest crawl speed}
     */
    public String text(UnitSystem units) {
        String words = switch (goal) {
            case LOWEST -> "lowest " + measure.word();
            case HIGHEST -> "highest " + measure.word();
            case NEAREST ->
                measure.word() + " near " + measure.scale().figure(target).text(units);
        };
        return weight == 1.0
                ? words
                : words + " weight "
                        + (weight == Math.rint(weight) ? Long.toString((long) weight) : Double.toString(weight));
    }
}
