package drivetrain.quantity;

import drivetrain.refusal.Refusal;

/**
 * A quantity with its display.
 *
 * @param quantity the quantity
 * @param display its units and decimals
 * @param <Q> the kind of quantity
 */
public record MeasuredFigure<Q extends Quantity<Q>>(Q quantity, Display<Q> display) implements Figure {

    /**
     * Checks the quantity.
     *
     * @throws drivetrain.refusal.RefusedException if its number is not finite in one of the units
     */
    public MeasuredFigure {
        if (!Double.isFinite(quantity.in(display.us())) || !Double.isFinite(quantity.in(display.metric()))) {
            throw Refusal.of("figure", quantity.toString(), "is too large to be shown")
                    .asException();
        }
    }

    @Override
    public double number(UnitSystem system) {
        return quantity.in(unitIn(system));
    }

    @Override
    public String unit(UnitSystem system) {
        return unitIn(system).symbol();
    }

    @Override
    public String digits(UnitSystem system) {
        int decimals = system == UnitSystem.METRIC ? display.metricDecimals() : display.usDecimals();
        return DecimalText.fixed(number(system), decimals);
    }

    @Override
    public String text(UnitSystem system) {
        String first = digits(system) + " " + unit(system);
        if (system != UnitSystem.BOTH || display.us() == display.metric()) {
            return first;
        }
        return first + " (" + text(UnitSystem.METRIC) + ")";
    }

    private Unit<Q> unitIn(UnitSystem system) {
        return system == UnitSystem.METRIC ? display.metric() : display.us();
    }
}
