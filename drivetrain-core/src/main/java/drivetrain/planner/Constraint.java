package drivetrain.planner;

import drivetrain.refusal.Refusal;

/**
 * A figure and the closed interval that it must lie in. NaN lies in none.
 *
 * @param figure the figure
 * @param low the least number that passes; minus infinity for no such limit
 * @param high the greatest number that passes; infinity for no such limit
 */
public record Constraint(Figure figure, double low, double high) {

    /**
     * Checks the limits.
     *
     * @throws drivetrain.refusal.RefusedException if a limit is NaN or if the least is above the greatest
     */
    public Constraint {
        if (!(low <= high)) {
            throw Refusal.of("constraint", low + " to " + high, "leaves no number")
                    .allowing("a least number that is not above the greatest")
                    .asException();
        }
    }

    /**
     * Sets a least number.
     *
     * @param figure the figure
     * @param low the least number that passes
     * @return the constraint
     * @throws drivetrain.refusal.RefusedException if the limit is NaN
     */
    public static Constraint atLeast(Figure figure, double low) {
        return new Constraint(figure, low, Double.POSITIVE_INFINITY);
    }

    /**
     * Sets a greatest number.
     *
     * @param figure the figure
     * @param high the greatest number that passes
     * @return the constraint
     * @throws drivetrain.refusal.RefusedException if the limit is NaN
     */
    public static Constraint atMost(Figure figure, double high) {
        return new Constraint(figure, Double.NEGATIVE_INFINITY, high);
    }

    /**
     * Sets both.
     *
     * @param figure the figure
     * @param low the least number that passes
     * @param high the greatest number that passes
     * @return the constraint
     * @throws drivetrain.refusal.RefusedException if a limit is NaN or if the least is above the greatest
     */
    public static Constraint between(Figure figure, double low, double high) {
        return new Constraint(figure, low, high);
    }

    /**
     * Tells whether a number passes.
     *
     * @param value the number
     * @return true if it lies in the interval; false for NaN
     */
    public boolean passes(double value) {
        return value >= low && value <= high;
    }
}
