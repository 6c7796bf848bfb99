package drivetrain.finding;

import drivetrain.quantity.DecimalText;

/**
 * The numbers that a house limit can mean.
 *
 * @param least the least number
 * @param reached true if the least number itself can be meant
 * @param most the greatest number, which can be meant
 */
public record HouseRange(double least, boolean reached, double most) {

    /**
     * Names the numbers above one and up to another.
     *
     * @param least the number that is too small
     * @param most the greatest number
     * @return the range
     */
    public static HouseRange above(double least, double most) {
        return new HouseRange(least, false, most);
    }

    /**
     * Names the numbers from one to another.
     *
     * @param least the least number
     * @param most the greatest number
     * @return the range
     */
    public static HouseRange between(double least, double most) {
        return new HouseRange(least, true, most);
    }

    /**
     * Tells whether a number can be meant.
     *
     * @param value any number
     * @return true if it is in the range; false for what is no number
     */
    public boolean contains(double value) {
        return (reached ? value >= least : value > least) && value <= most;
    }

    /**
     * Returns the range in words.
     *
     * @return the text, such as {@code more than 0, at most 1} or {@code 1 to 10}
     */
    public String words() {
        String from = DecimalText.shortest(least);
        String to = DecimalText.shortest(most);
        return reached ? from + " to " + to : "more than " + from + ", at most " + to;
    }
}
