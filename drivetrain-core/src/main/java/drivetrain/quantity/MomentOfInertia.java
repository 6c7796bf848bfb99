package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * The moment of inertia of a rotating mass about its axis.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class MomentOfInertia extends Magnitude<MomentOfInertia> {

    /** Kilogram square meter, the SI unit. */
    public static final Unit<MomentOfInertia> KILOGRAM_SQUARE_METER =
            Unit.of("kg m2", 1.0, "kg\u00B7m\u00B2", "kg m\u00B2", "kgm2", "kg-m2");

    /** Pound square foot. */
    public static final Unit<MomentOfInertia> POUND_SQUARE_FOOT =
            Unit.of("lb ft2", 0.45359237 * 0.3048 * 0.3048, "lb\u00B7ft\u00B2", "lb ft\u00B2", "lbft2", "lb-ft2");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<MomentOfInertia> KIND = Kind.of(
            "moment of inertia", MomentOfInertia::new, Map.of(), List.of(KILOGRAM_SQUARE_METER, POUND_SQUARE_FOOT));

    private MomentOfInertia(double si) {
        super("moment of inertia", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static MomentOfInertia parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in kg m2.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static MomentOfInertia ofKilogramSquareMeters(double number) {
        return KIND.of(number, KILOGRAM_SQUARE_METER);
    }

    /**
     * Returns the number in kg m2.
     *
     * @return the number
     */
    public double toKilogramSquareMeters() {
        return in(KILOGRAM_SQUARE_METER);
    }

    /**
     * Makes a quantity from its number in lb ft2.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static MomentOfInertia ofPoundSquareFeet(double number) {
        return KIND.of(number, POUND_SQUARE_FOOT);
    }

    /**
     * Returns the number in lb ft2.
     *
     * @return the number
     */
    public double toPoundSquareFeet() {
        return in(POUND_SQUARE_FOOT);
    }

    @Override
    public Kind<MomentOfInertia> kind() {
        return KIND;
    }
}
