package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * An area.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Area extends Magnitude<Area> {

    /** Square meter, the SI unit. */
    public static final Unit<Area> SQUARE_METER = Unit.of("m2", 1.0, "m\u00B2", "sq m");

    /** Square millimeter. */
    public static final Unit<Area> SQUARE_MILLIMETER = Unit.of("mm2", 1e-6, "mm\u00B2", "sq mm");

    /** Square centimeter. */
    public static final Unit<Area> SQUARE_CENTIMETER = Unit.of("cm2", 1e-4, "cm\u00B2", "sq cm");

    /** Square foot. */
    public static final Unit<Area> SQUARE_FOOT = Unit.of("ft2", 0.3048 * 0.3048, "ft\u00B2", "sq ft");

    /** Square inch. */
    public static final Unit<Area> SQUARE_INCH = Unit.of("in2", 0.0254 * 0.0254, "in\u00B2", "sq in");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Area> KIND = Kind.of(
            "area",
            Area::new,
            Map.of(),
            List.of(SQUARE_METER, SQUARE_MILLIMETER, SQUARE_CENTIMETER, SQUARE_FOOT, SQUARE_INCH));

    private Area(double si) {
        super("area", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Area parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in m2.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Area ofSquareMeters(double number) {
        return KIND.of(number, SQUARE_METER);
    }

    /**
     * Returns the number in m2.
     *
     * @return the number
     */
    public double toSquareMeters() {
        return in(SQUARE_METER);
    }

    /**
     * Makes a quantity from its number in mm2.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Area ofSquareMillimeters(double number) {
        return KIND.of(number, SQUARE_MILLIMETER);
    }

    /**
     * Returns the number in mm2.
     *
     * @return the number
     */
    public double toSquareMillimeters() {
        return in(SQUARE_MILLIMETER);
    }

    /**
     * Makes a quantity from its number in cm2.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Area ofSquareCentimeters(double number) {
        return KIND.of(number, SQUARE_CENTIMETER);
    }

    /**
     * Returns the number in cm2.
     *
     * @return the number
     */
    public double toSquareCentimeters() {
        return in(SQUARE_CENTIMETER);
    }

    /**
     * Makes a quantity from its number in ft2.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Area ofSquareFeet(double number) {
        return KIND.of(number, SQUARE_FOOT);
    }

    /**
     * Returns the number in ft2.
     *
     * @return the number
     */
    public double toSquareFeet() {
        return in(SQUARE_FOOT);
    }

    /**
     * Makes a quantity from its number in in2.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Area ofSquareInches(double number) {
        return KIND.of(number, SQUARE_INCH);
    }

    /**
     * Returns the number in in2.
     *
     * @return the number
     */
    public double toSquareInches() {
        return in(SQUARE_INCH);
    }

    @Override
    public Kind<Area> kind() {
        return KIND;
    }
}
