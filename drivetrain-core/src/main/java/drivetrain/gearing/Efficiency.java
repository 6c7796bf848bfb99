package drivetrain.gearing;

import drivetrain.quantity.DecimalText;
import drivetrain.refusal.Refusal;

/**
 * The fraction of the power put in that comes out.
 *
 * @param value more than 0, at most 1
 */
public record Efficiency(double value) {

    /**
     * Checks the value.
     *
     * @throws drivetrain.refusal.RefusedException if it is not more than 0 and at most 1
     */
    public Efficiency {
        if (!(value > 0.0 && value <= 1.0)) {
            throw Refusal.of("efficiency", Double.toString(value), "is out of range")
                    .allowing("more than 0, at most 1 (100 %)")
                    .asException();
        }
    }

    /**
     * Makes an efficiency.
     *
     * @param value more than 0, at most 1
     * @return the efficiency
     * @throws drivetrain.refusal.RefusedException if it is out of range
     */
    public static Efficiency of(double value) {
        return new Efficiency(value);
    }

    /** Reads what stands behind the word efficiency. */
    static Efficiency take(Literal literal) {
        int position = literal.position();
        double value = literal.fraction("an efficiency, such as 0.96 or 96 %");
        if (value <= 0.0 || value > 1.0) {
            throw literal.refusal("has an efficiency that is not more than 0 and at most 100 %", position);
        }
        return new Efficiency(value);
    }

    /** Writes the words that {@link #take} reads as the same efficiency. */
    String words() {
        String percent = DecimalText.significant(100.0 * value, 10);
        return "efficiency "
                + (Double.parseDouble(percent) / 100.0 == value ? percent + " %" : DecimalText.shortest(value));
    }
}
