package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A kinematic viscosity: dynamic viscosity over density.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class KinematicViscosity extends Magnitude<KinematicViscosity> {

    /** Square meter per second, the SI unit. */
    public static final Unit<KinematicViscosity> SQUARE_METER_PER_SECOND = Unit.of("m2/s", 1.0, "m\u00B2/s");

    /** Square millimeter per second, which is the centistokes. */
    public static final Unit<KinematicViscosity> SQUARE_MILLIMETER_PER_SECOND =
            Unit.of("mm2/s", 1e-6, "mm\u00B2/s", "cSt");

    private static final String DYNAMIC = "mm2/s; a dynamic viscosity has to be divided by the density first";

    /** The kind: its name, its units and how it is read. */
    public static final Kind<KinematicViscosity> KIND = Kind.of(
            "kinematic viscosity",
            KinematicViscosity::new,
            Map.of(
                    "cP",
                    DYNAMIC,
                    "mPa s",
                    DYNAMIC,
                    "mPa\u00B7s",
                    DYNAMIC,
                    "mPa*s",
                    DYNAMIC,
                    "Pa s",
                    DYNAMIC,
                    "P",
                    DYNAMIC),
            List.of(SQUARE_METER_PER_SECOND, SQUARE_MILLIMETER_PER_SECOND));

    private KinematicViscosity(double si) {
        super("kinematic viscosity", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static KinematicViscosity parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in m2/s.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static KinematicViscosity ofSquareMetersPerSecond(double number) {
        return KIND.of(number, SQUARE_METER_PER_SECOND);
    }

    /**
     * Returns the number in m2/s.
     *
     * @return the number
     */
    public double toSquareMetersPerSecond() {
        return in(SQUARE_METER_PER_SECOND);
    }

    /**
     * Makes a quantity from its number in mm2/s.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static KinematicViscosity ofSquareMillimetersPerSecond(double number) {
        return KIND.of(number, SQUARE_MILLIMETER_PER_SECOND);
    }

    /**
     * Returns the number in mm2/s.
     *
     * @return the number
     */
    public double toSquareMillimetersPerSecond() {
        return in(SQUARE_MILLIMETER_PER_SECOND);
    }

    @Override
    public Kind<KinematicViscosity> kind() {
        return KIND;
    }
}
