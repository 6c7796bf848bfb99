package drivetrain.quantity;

import drivetrain.refusal.Refusal;

/**
 * A number without a dimension.
 *
 * @param value the number, finite
 * @param sign a sign shown behind it, such as {@code %}; empty for none
 * @param decimals the decimals shown, 0 to 15
 */
public record PlainFigure(double value, String sign, int decimals) implements Figure {

    /**
     * Checks the number.
     *
     * @throws drivetrain.refusal.RefusedException if it is not finite
     * @throws IllegalArgumentException if the count of decimals is out of range
     */
    public PlainFigure {
        if (!Double.isFinite(value)) {
            throw Refusal.of("figure", Double.toString(value), "is not a finite number")
                    .asException();
        }
        DecimalText.requireDecimals(decimals);
        value += 0.0;
    }

    @Override
    public double number(UnitSystem system) {
        return value;
    }

    @Override
    public String unit(UnitSystem system) {
        return sign;
    }

    @Override
    public String digits(UnitSystem system) {
        return DecimalText.fixed(value, decimals);
    }

    @Override
    public String text(UnitSystem system) {
        return sign.isEmpty() ? digits(system) : digits(system) + " " + sign;
    }
}
