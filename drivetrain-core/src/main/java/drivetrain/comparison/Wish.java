package drivetrain.comparison;

import drivetrain.quantity.UnitSystem;

/**
 * What a drivetrain package is to keep: a measure between two numbers.
 *
 * @param measure the measure
 * @param low the least number on its scale; minus infinity for no such limit
 * @param high the greatest number; infinity for no such limit
 */
public record Wish(Measure measure, double low, double high) {

    /** A figure that equals a limit to twelve digits keeps it; the limits of a wish are typed, those of a figure computed. */
    private static final double SAME = 1e-12;

    /**
     * Wishes a measure no less than a number.
     *
     * @param measure the measure
     * @param low the number
     * @return the wish
     */
    public static Wish atLeast(Measure measure, double low) {
        return new Wish(measure, low, Double.POSITIVE_INFINITY);
    }

    /**
     * Wishes a measure no more than a number.
     *
     * @param measure the measure
     * @param high the number
     * @return the wish
     */
    public static Wish atMost(Measure measure, double high) {
        return new Wish(measure, Double.NEGATIVE_INFINITY, high);
    }

    /** Returns the least number that passes. */
    double least() {
        return low - SAME * Math.abs(low);
    }

    /** Returns the greatest number that passes. */
    double greatest() {
        return high + SAME * Math.abs(high);
    }

    /**
     * Tells whether a number keeps the wish.
     *
     * @param number the number on the scale of the measure
     * @return true if it does; false for NaN
     */
    public boolean isKeptBy(double number) {
        boolean isAbove = low == Double.NEGATIVE_INFINITY ? !Double.isNaN(number) : number >= least();
        return isAbove && (high == Double.POSITIVE_INFINITY || number <= greatest());
    }

    /**
     * Says the wish.
     *
     * @param units the units
     * @return the words, such as {@code crawl ratio at least 60.0}
     */
    public String text(UnitSystem units) {
        if (low == Double.NEGATIVE_INFINITY) {
            return measure.word() + " at most " + measure.scale().figure(high).text(units);
        }
        String least = measure.scale().figure(low).text(units);
        return high == Double.POSITIVE_INFINITY
                ? measure.word() + " at least " + least
                : measure.word() + " between " + least + " and "
                        + measure.scale().figure(high).text(units);
    }
}
