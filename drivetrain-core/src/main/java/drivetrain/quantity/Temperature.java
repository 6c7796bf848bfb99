package drivetrain.quantity;

import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Map;

/**
 * A thermodynamic temperature, never below absolute zero. Temperatures are compared but not added: a difference of temperatures is not a
 * temperature.
 */
public final class Temperature extends Quantity<Temperature> {

    /** Kelvin, the SI unit. */
    public static final Unit<Temperature> KELVIN = Unit.of("K", 1.0, "kelvin");

    /** Degree Celsius, 0 degC = 273.15 K exactly. */
    public static final Unit<Temperature> CELSIUS =
            Unit.shifted("degC", 1.0, 273.15, "\u00B0C", "\u00B0 C", "deg C", "C", "celsius");

    /** Degree Fahrenheit, 32 degF = 0 degC and 9 degF = 5 K exactly. */
    public static final Unit<Temperature> FAHRENHEIT =
            Unit.shifted("degF", 5.0 / 9.0, 459.67, "\u00B0F", "\u00B0 F", "deg F", "F", "fahrenheit");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Temperature> KIND =
            Kind.of("temperature", Temperature::new, Map.of(), List.of(KELVIN, CELSIUS, FAHRENHEIT));

    private Temperature(double si) {
        super("temperature", si);
        if (si < 0.0) {
            throw Refusal.of("temperature", si + " K", "is below absolute zero")
                    .allowing("0 K, -273.15 degC, -459.67 degF or more")
                    .asException();
        }
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as {@code 25 degC}
     * @return the temperature
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit, or below absolute zero
     */
    public static Temperature parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a temperature from its number in K.
     *
     * @param number a finite number
     * @return the temperature
     * @throws drivetrain.refusal.RefusedException if the number is not finite or below absolute zero
     */
    public static Temperature ofKelvins(double number) {
        return KIND.of(number, KELVIN);
    }

    /**
     * Returns the number in K.
     *
     * @return the number
     */
    public double toKelvins() {
        return in(KELVIN);
    }

    /**
     * Makes a temperature from its number in degC.
     *
     * @param number a finite number
     * @return the temperature
     * @throws drivetrain.refusal.RefusedException if the number is not finite or below absolute zero
     */
    public static Temperature ofCelsius(double number) {
        return KIND.of(number, CELSIUS);
    }

    /**
     * Returns the number in degC.
     *
     * @return the number
     */
    public double toCelsius() {
        return in(CELSIUS);
    }

    /**
     * Makes a temperature from its number in degF.
     *
     * @param number a finite number
     * @return the temperature
     * @throws drivetrain.refusal.RefusedException if the number is not finite or below absolute zero
     */
    public static Temperature ofFahrenheit(double number) {
        return KIND.of(number, FAHRENHEIT);
    }

    /**
     * Returns the number in degF.
     *
     * @return the number
     */
    public double toFahrenheit() {
        return in(FAHRENHEIT);
    }

    @Override
    public Kind<Temperature> kind() {
        return KIND;
    }
}
