package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A mass per volume.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Density extends Magnitude<Density> {

    /** Kilogram per cubic meter, the SI unit. */
    public static final Unit<Density> KILOGRAM_PER_CUBIC_METER = Unit.of("kg/m3", 1.0, "kg/m\u00B3");

    /** Kilogram per liter. */
    public static final Unit<Density> KILOGRAM_PER_LITER = Unit.of("kg/L", 1e3, "g/cm3", "g/cm\u00B3", "g/cc", "g/mL");

    /** Pound per US gallon. */
    public static final Unit<Density> POUND_PER_US_GALLON =
            Unit.of("lb/US gal", 0.45359237 / (231.0 * 0.0254 * 0.0254 * 0.0254));

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Density> KIND = Kind.of(
            "density",
            Density::new,
            Map.of("lb/gal", "lb/US gal; the imperial gallon is 20 % larger"),
            List.of(KILOGRAM_PER_CUBIC_METER, KILOGRAM_PER_LITER, POUND_PER_US_GALLON));

    private Density(double si) {
        super("density", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Density parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in kg/m3.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Density ofKilogramsPerCubicMeter(double number) {
        return KIND.of(number, KILOGRAM_PER_CUBIC_METER);
    }

    /**
     * Returns the number in kg/m3.
     *
     * @return the number
     */
    public double toKilogramsPerCubicMeter() {
        return in(KILOGRAM_PER_CUBIC_METER);
    }

    /**
     * Makes a quantity from its number in kg/L.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Density ofKilogramsPerLiter(double number) {
        return KIND.of(number, KILOGRAM_PER_LITER);
    }

    /**
     * Returns the number in kg/L.
     *
     * @return the number
     */
    public double toKilogramsPerLiter() {
        return in(KILOGRAM_PER_LITER);
    }

    /**
     * Makes a quantity from its number in lb/US gal.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Density ofPoundsPerUsGallon(double number) {
        return KIND.of(number, POUND_PER_US_GALLON);
    }

    /**
     * Returns the number in lb/US gal.
     *
     * @return the number
     */
    public double toPoundsPerUsGallon() {
        return in(POUND_PER_US_GALLON);
    }

    @Override
    public Kind<Density> kind() {
        return KIND;
    }
}
