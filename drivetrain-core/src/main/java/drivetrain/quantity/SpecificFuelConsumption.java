package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * Fuel mass burnt per energy delivered at the crankshaft.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class SpecificFuelConsumption extends Magnitude<SpecificFuelConsumption> {

    /** Kilogram per joule, the SI unit. */
    public static final Unit<SpecificFuelConsumption> KILOGRAM_PER_JOULE = Unit.of("kg/J", 1.0);

    /** Gram per kilowatt-hour. */
    public static final Unit<SpecificFuelConsumption> GRAM_PER_KILOWATT_HOUR =
            Unit.of("g/kWh", 1e-3 / 3.6e6, "g/(kW\u00B7h)", "g/(kW-h)", "g/kW-h", "g/kW\u00B7h");

    /** Pound per mechanical horsepower-hour. */
    public static final Unit<SpecificFuelConsumption> POUND_PER_HORSEPOWER_HOUR = Unit.signed(
            "lb/(hp\u00B7h)",
            "lb/(hp-h)",
            0.45359237 / (550.0 * 0.45359237 * 9.80665 * 0.3048 * 3600.0),
            "lb/hp-h",
            "lb/hp\u00B7h",
            "lb/hph",
            "lb/hp/h",
            "lb/hp-hr",
            "lb/(hp h)");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<SpecificFuelConsumption> KIND = Kind.of(
            "specific fuel consumption",
            SpecificFuelConsumption::new,
            Map.of(),
            List.of(KILOGRAM_PER_JOULE, GRAM_PER_KILOWATT_HOUR, POUND_PER_HORSEPOWER_HOUR));

    private SpecificFuelConsumption(double si) {
        super("specific fuel consumption", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static SpecificFuelConsumption parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in kg/J.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static SpecificFuelConsumption ofKilogramsPerJoule(double number) {
        return KIND.of(number, KILOGRAM_PER_JOULE);
    }

    /**
     * Returns the number in kg/J.
     *
     * @return the number
     */
    public double toKilogramsPerJoule() {
        return in(KILOGRAM_PER_JOULE);
    }

    /**
     * Makes a quantity from its number in g/kWh.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static SpecificFuelConsumption ofGramsPerKilowattHour(double number) {
        return KIND.of(number, GRAM_PER_KILOWATT_HOUR);
    }

    /**
     * Returns the number in g/kWh.
     *
     * @return the number
     */
    public double toGramsPerKilowattHour() {
        return in(GRAM_PER_KILOWATT_HOUR);
    }

    /**
     * Makes a quantity from its number in lb/(hp·h).
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static SpecificFuelConsumption ofPoundsPerHorsepowerHour(double number) {
        return KIND.of(number, POUND_PER_HORSEPOWER_HOUR);
    }

    /**
     * Returns the number in lb/(hp·h).
     *
     * @return the number
     */
    public double toPoundsPerHorsepowerHour() {
        return in(POUND_PER_HORSEPOWER_HOUR);
    }

    @Override
    public Kind<SpecificFuelConsumption> kind() {
        return KIND;
    }
}
