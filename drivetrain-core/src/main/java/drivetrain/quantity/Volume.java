package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A volume.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Volume extends Magnitude<Volume> {

    /** Cubic meter, the SI unit. */
    public static final Unit<Volume> CUBIC_METER = Unit.of("m3", 1.0, "m\u00B3");

    /** Liter. */
    public static final Unit<Volume> LITER = Unit.of("L", 1e-3, "liter", "liters", "litre", "litres");

    /** Cubic centimeter. */
    public static final Unit<Volume> CUBIC_CENTIMETER = Unit.of("cm3", 1e-6, "cm\u00B3", "cc");

    /** Cubic inch. */
    public static final Unit<Volume> CUBIC_INCH =
            Unit.of("in3", 0.0254 * 0.0254 * 0.0254, "in\u00B3", "cu in", "ci", "cid", "cubic inch", "cubic inches");

    /** US liquid gallon, 231 in³ exactly. */
    public static final Unit<Volume> US_GALLON =
            Unit.of("US gal", 231.0 * 0.0254 * 0.0254 * 0.0254, "USgal", "US gallon", "US gallons");

    /** Imperial gallon, 4.546 09 L exactly. */
    public static final Unit<Volume> IMPERIAL_GALLON =
            Unit.of("imp gal", 4.54609e-3, "imperial gal", "imperial gallon", "imperial gallons");

    private static final String GALLON_MEANT = "US gal or imp gal, which are 20 % apart";

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Volume> KIND = Kind.of(
            "volume",
            Volume::new,
            Map.of("gal", GALLON_MEANT, "gallon", GALLON_MEANT, "gallons", GALLON_MEANT),
            List.of(CUBIC_METER, LITER, CUBIC_CENTIMETER, CUBIC_INCH, US_GALLON, IMPERIAL_GALLON));

    private Volume(double si) {
        super("volume", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Volume parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in m3.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Volume ofCubicMeters(double number) {
        return KIND.of(number, CUBIC_METER);
    }

    /**
     * Returns the number in m3.
     *
     * @return the number
     */
    public double toCubicMeters() {
        return in(CUBIC_METER);
    }

    /**
     * Makes a quantity from its number in L.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Volume ofLiters(double number) {
        return KIND.of(number, LITER);
    }

    /**
     * Returns the number in L.
     *
     * @return the number
     */
    public double toLiters() {
        return in(LITER);
    }

    /**
     * Makes a quantity from its number in cm3.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Volume ofCubicCentimeters(double number) {
        return KIND.of(number, CUBIC_CENTIMETER);
    }

    /**
     * Returns the number in cm3.
     *
     * @return the number
     */
    public double toCubicCentimeters() {
        return in(CUBIC_CENTIMETER);
    }

    /**
     * Makes a quantity from its number in in3.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Volume ofCubicInches(double number) {
        return KIND.of(number, CUBIC_INCH);
    }

    /**
     * Returns the number in in3.
     *
     * @return the number
     */
    public double toCubicInches() {
        return in(CUBIC_INCH);
    }

    /**
     * Makes a quantity from its number in US gal.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Volume ofUsGallons(double number) {
        return KIND.of(number, US_GALLON);
    }

    /**
     * Returns the number in US gal.
     *
     * @return the number
     */
    public double toUsGallons() {
        return in(US_GALLON);
    }

    /**
     * Makes a quantity from its number in imp gal.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Volume ofImperialGallons(double number) {
        return KIND.of(number, IMPERIAL_GALLON);
    }

    /**
     * Returns the number in imp gal.
     *
     * @return the number
     */
    public double toImperialGallons() {
        return in(IMPERIAL_GALLON);
    }

    @Override
    public Kind<Volume> kind() {
        return KIND;
    }
}
