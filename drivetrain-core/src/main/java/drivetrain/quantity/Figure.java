package drivetrain.quantity;

/**
 * A number that a user sees: a quantity or a plain number, with the unit and the decimals in which it is shown. The number itself is
 * finite and never rounded.
 */
public sealed interface Figure permits MeasuredFigure, PlainFigure {

    /**
     * Makes a figure from a quantity.
     *
     * @param quantity the quantity
     * @param display its units and decimals
     * @param <Q> the kind of quantity
     * @return the figure
     */
    static <Q extends Quantity<Q>> Figure of(Q quantity, Display<Q> display) {
        return new MeasuredFigure<>(quantity, display);
    }

    /**
     * Makes a figure from a plain number, such as a ratio.
     *
     * @param value the number
     * @param decimals the decimals shown
     * @return the figure
     */
    static Figure plain(double value, int decimals) {
        return new PlainFigure(value, "", decimals);
    }

    /**
     * Makes a figure that is shown as a percentage.
     *
     * @param fraction the fraction, 0.05 for 5 %
     * @param decimals the decimals shown
     * @return the figure, whose number is 100 times the fraction and whose unit is {@code %}
     */
    static Figure percent(double fraction, int decimals) {
        return new PlainFigure(100.0 * fraction, "%", decimals);
    }

    /**
     * Returns the number in full in the unit that {@link #unit} names.
     *
     * @param system the system; {@link UnitSystem#BOTH} gives the US number
     * @return the number
     */
    double number(UnitSystem system);

    /**
     * Returns the symbol of the unit.
     *
     * @param system the system; {@link UnitSystem#BOTH} gives the US unit
     * @return the symbol; empty for a plain number
     */
    String unit(UnitSystem system);

    /**
     * Returns the rounded number and its unit.
     *
     * @param system the system
     * @return the text, such as {@code 65.0 mph} or {@code 65.0 mph (104.6 km/h)}
     */
    String text(UnitSystem system);

    /**
     * Returns the rounded number alone, for a table column that names the unit in its head.
     *
     * @param system the system; {@link UnitSystem#BOTH} gives the US number
     * @return the text
     */
    String digits(UnitSystem system);
}
