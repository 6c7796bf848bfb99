package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A road speed.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Speed extends Magnitude<Speed> {

    /** Meter per second, the SI unit. */
    public static final Unit<Speed> METER_PER_SECOND = Unit.of("m/s", 1.0, "mps");

    /** Kilometer per hour, 1/3.6 m/s. */
    public static final Unit<Speed> KILOMETER_PER_HOUR = Unit.of("km/h", 1.0 / 3.6, "km/hr", "kmh", "kph", "kmph");

    /** Statute mile per hour, 0.44704 m/s exactly. */
    public static final Unit<Speed> MILE_PER_HOUR = Unit.of("mph", 1609.344 / 3600.0, "mi/h", "mi/hr", "miles/h");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Speed> KIND =
            Kind.of("speed", Speed::new, Map.of(), List.of(METER_PER_SECOND, KILOMETER_PER_HOUR, MILE_PER_HOUR));

    private Speed(double si) {
        super("speed", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Speed parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in m/s.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Speed ofMetersPerSecond(double number) {
        return KIND.of(number, METER_PER_SECOND);
    }

    /**
     * Returns the number in m/s.
     *
     * @return the number
     */
    public double toMetersPerSecond() {
        return in(METER_PER_SECOND);
    }

    /**
     * Makes a quantity from its number in km/h.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Speed ofKilometersPerHour(double number) {
        return KIND.of(number, KILOMETER_PER_HOUR);
    }

    /**
     * Returns the number in km/h.
     *
     * @return the number
     */
    public double toKilometersPerHour() {
        return in(KILOMETER_PER_HOUR);
    }

    /**
     * Makes a quantity from its number in mph.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Speed ofMilesPerHour(double number) {
        return KIND.of(number, MILE_PER_HOUR);
    }

    /**
     * Returns the number in mph.
     *
     * @return the number
     */
    public double toMilesPerHour() {
        return in(MILE_PER_HOUR);
    }

    @Override
    public Kind<Speed> kind() {
        return KIND;
    }
}
