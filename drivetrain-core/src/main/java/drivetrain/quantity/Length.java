package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A distance, a diameter, an offset. May be negative where a direction is meant. Inches and feet are also read in the fractions of a tape
 * measure, from halves to sixty-fourths: {@code 88 7/16 in}.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Length extends Magnitude<Length> {

    /** Meter, the SI unit. */
    public static final Unit<Length> METER = Unit.of("m", 1.0, "meter", "meters", "metre", "metres");

    /** Millimeter. */
    public static final Unit<Length> MILLIMETER =
            Unit.of("mm", 1e-3, "MM", "millimeter", "millimeters", "millimetre", "millimetres");

    /** Centimeter. */
    public static final Unit<Length> CENTIMETER =
            Unit.of("cm", 1e-2, "centimeter", "centimeters", "centimetre", "centimetres");

    /** Kilometer. */
    public static final Unit<Length> KILOMETER =
            Unit.of("km", 1e3, "kilometer", "kilometers", "kilometre", "kilometres");

    /** Inch, 25.4 mm exactly. */
    public static final Unit<Length> INCH = Unit.onTape("in", 0.0254, "\"", "inch", "inches", "\u2033", "\u201D");

    /** Foot, 0.3048 m exactly. */
    public static final Unit<Length> FOOT = Unit.onTape("ft", 0.3048, "'", "foot", "feet", "\u2032", "\u2019");

    /** Statute mile, 5280 ft exactly. */
    public static final Unit<Length> MILE = Unit.of("mile", 1609.344, "miles", "mi");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Length> KIND = Kind.of(
            "length",
            Length::new,
            Map.of("Mm", "mm for millimeters; Mm would be megameters"),
            List.of(METER, MILLIMETER, CENTIMETER, KILOMETER, INCH, FOOT, MILE));

    private Length(double si) {
        super("length", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Length parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in m.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Length ofMeters(double number) {
        return KIND.of(number, METER);
    }

    /**
     * Returns the number in m.
     *
     * @return the number
     */
    public double toMeters() {
        return in(METER);
    }

    /**
     * Makes a quantity from its number in mm.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Length ofMillimeters(double number) {
        return KIND.of(number, MILLIMETER);
    }

    /**
     * Returns the number in mm.
     *
     * @return the number
     */
    public double toMillimeters() {
        return in(MILLIMETER);
    }

    /**
     * Makes a quantity from its number in cm.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Length ofCentimeters(double number) {
        return KIND.of(number, CENTIMETER);
    }

    /**
     * Returns the number in cm.
     *
     * @return the number
     */
    public double toCentimeters() {
        return in(CENTIMETER);
    }

    /**
     * Makes a quantity from its number in km.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Length ofKilometers(double number) {
        return KIND.of(number, KILOMETER);
    }

    /**
     * Returns the number in km.
     *
     * @return the number
     */
    public double toKilometers() {
        return in(KILOMETER);
    }

    /**
     * Makes a quantity from its number in in.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Length ofInches(double number) {
        return KIND.of(number, INCH);
    }

    /**
     * Returns the number in in.
     *
     * @return the number
     */
    public double toInches() {
        return in(INCH);
    }

    /**
     * Makes a quantity from its number in ft.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Length ofFeet(double number) {
        return KIND.of(number, FOOT);
    }

    /**
     * Returns the number in ft.
     *
     * @return the number
     */
    public double toFeet() {
        return in(FOOT);
    }

    /**
     * Makes a quantity from its number in mile.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Length ofMiles(double number) {
        return KIND.of(number, MILE);
    }

    /**
     * Returns the number in mile.
     *
     * @return the number
     */
    public double toMiles() {
        return in(MILE);
    }

    @Override
    public Kind<Length> kind() {
        return KIND;
    }
}
