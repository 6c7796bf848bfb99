package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A flow of volume.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class VolumeFlow extends Magnitude<VolumeFlow> {

    /** Cubic meter per second, the SI unit. */
    public static final Unit<VolumeFlow> CUBIC_METER_PER_SECOND = Unit.of("m3/s", 1.0, "m\u00B3/s");

    /** Liter per hour. */
    public static final Unit<VolumeFlow> LITER_PER_HOUR = Unit.of("L/h", 1e-3 / 3600.0, "lph", "L/hr");

    /** Liter per minute. */
    public static final Unit<VolumeFlow> LITER_PER_MINUTE = Unit.of("L/min", 1e-3 / 60.0, "lpm");

    /** Cubic centimeter per minute. */
    public static final Unit<VolumeFlow> CUBIC_CENTIMETER_PER_MINUTE =
            Unit.of("cc/min", 1e-6 / 60.0, "cm3/min", "cm\u00B3/min", "mL/min");

    /** US gallon per hour. */
    public static final Unit<VolumeFlow> US_GALLON_PER_HOUR =
            Unit.of("US gal/h", 231.0 * 0.0254 * 0.0254 * 0.0254 / 3600.0, "USgal/h", "US gal/hr", "US gph");

    /** Imperial gallon per hour. */
    public static final Unit<VolumeFlow> IMPERIAL_GALLON_PER_HOUR =
            Unit.of("imp gal/h", 4.54609e-3 / 3600.0, "imperial gal/h", "imp gph");

    private static final String GALLON_MEANT = "US gal/h or imp gal/h, which are 20 % apart";
    private static final Map<String, String> REFUSED = Map.of(
            "gal/h", GALLON_MEANT,
            "gal/hr", GALLON_MEANT,
            "gph", GALLON_MEANT,
            "ML/min", "mL/min for milliliters; ML would be megaliters");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<VolumeFlow> KIND = Kind.of(
            "volume flow",
            VolumeFlow::new,
            REFUSED,
            List.of(
                    CUBIC_METER_PER_SECOND,
                    LITER_PER_HOUR,
                    LITER_PER_MINUTE,
                    CUBIC_CENTIMETER_PER_MINUTE,
                    US_GALLON_PER_HOUR,
                    IMPERIAL_GALLON_PER_HOUR));

    private VolumeFlow(double si) {
        super("volume flow", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static VolumeFlow parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in m3/s.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static VolumeFlow ofCubicMetersPerSecond(double number) {
        return KIND.of(number, CUBIC_METER_PER_SECOND);
    }

    /**
     * Returns the number in m3/s.
     *
     * @return the number
     */
    public double toCubicMetersPerSecond() {
        return in(CUBIC_METER_PER_SECOND);
    }

    /**
     * Makes a quantity from its number in L/h.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static VolumeFlow ofLitersPerHour(double number) {
        return KIND.of(number, LITER_PER_HOUR);
    }

    /**
     * Returns the number in L/h.
     *
     * @return the number
     */
    public double toLitersPerHour() {
        return in(LITER_PER_HOUR);
    }

    /**
     * Makes a quantity from its number in L/min.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static VolumeFlow ofLitersPerMinute(double number) {
        return KIND.of(number, LITER_PER_MINUTE);
    }

    /**
     * Returns the number in L/min.
     *
     * @return the number
     */
    public double toLitersPerMinute() {
        return in(LITER_PER_MINUTE);
    }

    /**
     * Makes a quantity from its number in cc/min.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static VolumeFlow ofCubicCentimetersPerMinute(double number) {
        return KIND.of(number, CUBIC_CENTIMETER_PER_MINUTE);
    }

    /**
     * Returns the number in cc/min.
     *
     * @return the number
     */
    public double toCubicCentimetersPerMinute() {
        return in(CUBIC_CENTIMETER_PER_MINUTE);
    }

    /**
     * Makes a quantity from its number in US gal/h.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static VolumeFlow ofUsGallonsPerHour(double number) {
        return KIND.of(number, US_GALLON_PER_HOUR);
    }

    /**
     * Returns the number in US gal/h.
     *
     * @return the number
     */
    public double toUsGallonsPerHour() {
        return in(US_GALLON_PER_HOUR);
    }

    /**
     * Makes a quantity from its number in imp gal/h.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static VolumeFlow ofImperialGallonsPerHour(double number) {
        return KIND.of(number, IMPERIAL_GALLON_PER_HOUR);
    }

    /**
     * Returns the number in imp gal/h.
     *
     * @return the number
     */
    public double toImperialGallonsPerHour() {
        return in(IMPERIAL_GALLON_PER_HOUR);
    }

    @Override
    public Kind<VolumeFlow> kind() {
        return KIND;
    }
}
