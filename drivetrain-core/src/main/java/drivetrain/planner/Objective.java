package drivetrain.planner;

import drivetrain.refusal.Refusal;

/**
 * A figure that is wished low, high or near a target, with the weight of that wish.
 *
 * <p>Scores count in logarithms, because figures of different kinds can only be weighed by proportion: with equal weights one percent of the one
 * figure is worth one percent of the other, and with twice the weight twice as much.
 *
 * @param figure the figure
 * @param goal what is wished
 * @param weight the weight, greater than zero
 * @param target the target where the goal is {@link Goal#NEAREST}, greater than zero; 1 otherwise
 */
public record Objective(Figure figure, Goal goal, double weight, double target) {

    /** What can be wished of a figure. */
    public enum Goal {
        /** As low as can be. */
        LOWEST,
        /** As high as can be. */
        HIGHEST,
        /** As near to a target as can be, by proportion. */
        NEAREST
    }

    /**
     * Checks the numbers.
     *
     * @throws drivetrain.refusal.RefusedException if weight or target is not a finite number greater than zero
     */
    public Objective {
        require("weight", weight);
        require("target", target);
    }

    private static void require(String what, double value) {
        if (!(value > 0.0 && value < Double.POSITIVE_INFINITY)) {
            throw Refusal.of(what, Double.toString(value), "must be greater than zero")
                    .allowing("a finite number greater than zero")
                    .asException();
        }
    }

    /**
     * Wishes a figure low.
     *
     * @param figure the figure
     * @param weight the weight
     * @return the objective
     * @throws drivetrain.refusal.RefusedException if the weight is not a finite number greater than zero
     */
    public static Objective lowest(Figure figure, double weight) {
        return new Objective(figure, Goal.LOWEST, weight, 1.0);
    }

    /**
     * Wishes a figure high.
     *
     * @param figure the figure
     * @param weight the weight
     * @return the objective
     * @throws drivetrain.refusal.RefusedException if the weight is not a finite number greater than zero
     */
    public static Objective highest(Figure figure, double weight) {
        return new Objective(figure, Goal.HIGHEST, weight, 1.0);
    }

    /**
     * Wishes a figure near a target.
     *
     * @param figure the figure
     * @param weight the weight
     * @param target the target
     * @return the objective
     * @throws drivetrain.refusal.RefusedException if weight or target is not a finite number greater than zero
     */
    public static Objective nearest(Figure figure, double weight, double target) {
        return new Objective(figure, Goal.NEAREST, weight, target);
    }

    /**
     * Returns what a number adds to the score, which is better the lower it is.
     *
     * @param value the number of the figure
     * @return weight x ln, minus weight x ln, or weight x |ln of the proportion to the target|; NaN for what is not finite and greater than zero
     */
    public double score(double value) {
        if (!(value > 0.0 && value < Double.POSITIVE_INFINITY)) {
            return Double.NaN;
        }
        return switch (goal) {
            case LOWEST -> weight * StrictMath.log(value);
            case HIGHEST -> -weight * StrictMath.log(value);
            case NEAREST -> weight * Math.abs(StrictMath.log(value / target));
        };
    }

    /** Returns the least score that a figure can have whose logarithm lies in an interval. */
    double leastScore(double low, double high) {
        return switch (goal) {
            case LOWEST -> weight * low;
            case HIGHEST -> -weight * high;
            case NEAREST -> {
                double aim = Math.log(target);
                yield weight * Math.max(0.0, Math.max(low - aim, aim - high));
            }
        };
    }
}
