package drivetrain.gearing;

import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Figure;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.OptionalInt;

/**
 * A speed ratio, turns in for one turn out: a decimal as printed on a data sheet, or a pair of tooth counts, which is exact.
 *
 * <p>{@code 41/11} is held as 3.727272..., shown as 3.73 and written back as {@code 41/11}. Two ratios are equal when they are written alike:
 * {@code 4.10} and {@code 41/10} have the same value but differ as ratios.
 *
 * @param value turns in for one turn out, 0.3 to 20
 * @param driven the teeth of the driven gear (ring gear), 5 to 80, where the pair is known
 * @param driving the teeth of the driving gear (pinion), 5 to 80, where the pair is known
 */
public record Ratio(double value, OptionalInt driven, OptionalInt driving) {

    static final double LEAST = 0.3;
    static final double MOST = 20.0;
    static final int FEWEST_TEETH = 5;
    static final int MOST_TEETH = 80;

    /**
     * Checks the value and the teeth.
     *
     * @throws drivetrain.refusal.RefusedException if the value or a tooth count is out of range, if only one count is given, or if the value
     *     is not their quotient
     */
    public Ratio {
        if (!(value >= LEAST && value <= MOST)) {
            throw Refusal.of("ratio", Double.toString(value), "is out of range")
                    .allowing("0.3 to 20")
                    .asException();
        }
        if (driven.isPresent() != driving.isPresent()) {
            throw Refusal.of("ratio", Double.toString(value), "has one tooth count of two")
                    .asException();
        }
        if (driven.isPresent()) {
            requireTeeth(driven.getAsInt());
            requireTeeth(driving.getAsInt());
            if (value != (double) driven.getAsInt() / driving.getAsInt()) {
                throw Refusal.of("ratio", Double.toString(value), "is not the quotient of its teeth")
                        .asException();
            }
        }
    }

    /**
     * Makes a ratio from a decimal.
     *
     * @param value turns in for one turn out, 0.3 to 20
     * @return the ratio
     * @throws drivetrain.refusal.RefusedException if it is out of range
     */
    public static Ratio of(double value) {
        return new Ratio(value, OptionalInt.empty(), OptionalInt.empty());
    }

    /**
     * Makes a ratio from tooth counts.
     *
     * @param driven the teeth of the driven gear, 5 to 80
     * @param driving the teeth of the driving gear, 5 to 80
     * @return the ratio, driven / driving
     * @throws drivetrain.refusal.RefusedException if a count or the quotient is out of range
     */
    public static Ratio ofTeeth(int driven, int driving) {
        return new Ratio((double) driven / driving, OptionalInt.of(driven), OptionalInt.of(driving));
    }

    /**
     * Reads {@code 4.10}, {@code 4.10:1}, {@code 41/11} or {@code 41:11}.
     *
     * @param text the text
     * @return the ratio
     * @throws drivetrain.refusal.RefusedException if the text is something else or out of range, with the index of the fault
     */
    public static Ratio parse(String text) {
        Literal literal = Literal.of("ratio", text, RatioText.ALLOWED, List.of());
        Ratio ratio = RatioText.take(literal, RatioLimits.ANY);
        literal.requireEnd();
        return ratio;
    }

    /**
     * Tells whether the teeth are known.
     *
     * @return true for a pair, false for a decimal
     */
    public boolean isPair() {
        return driven.isPresent();
    }

    /**
     * Writes the ratio so that {@link #parse} reads the same ratio.
     *
     * @return {@code 41/11}, or the decimal in full with at least two decimals, such as {@code 4.10}
     */
    public String text() {
        return isPair() ? driven.getAsInt() + "/" + driving.getAsInt() : decimalText();
    }

    /**
     * Returns the ratio for showing: a pair or a short decimal to two decimals, any other to three.
     *
     * @return the figure, whose number is not rounded
     */
    public Figure figure() {
        boolean two = isPair() || value == Double.parseDouble(DecimalText.fixed(value, 2));
        return Figure.plain(value, two ? 2 : 3);
    }

    private String decimalText() {
        String two = DecimalText.fixed(value, 2);
        return Double.parseDouble(two) == value ? two : DecimalText.shortest(value);
    }

    private static void requireTeeth(int count) {
        if (count < FEWEST_TEETH || count > MOST_TEETH) {
            throw Refusal.of("tooth count", Integer.toString(count), "is out of range")
                    .allowing(FEWEST_TEETH + " to " + MOST_TEETH + " teeth")
                    .asException();
        }
    }
}
