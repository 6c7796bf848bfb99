package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A plane angle; signed, and not reduced to one turn.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Angle extends Magnitude<Angle> {

    /** Radian, the SI unit. */
    public static final Unit<Angle> RADIAN = Unit.of("rad", 1.0, "radian", "radians");

    /** Degree, pi/180 rad. */
    public static final Unit<Angle> DEGREE = Unit.of("deg", Math.PI / 180.0, "\u00B0", "degree", "degrees");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Angle> KIND = Kind.of("angle", Angle::new, Map.of(), List.of(RADIAN, DEGREE));

    private Angle(double si) {
        super("angle", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Angle parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in rad.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Angle ofRadians(double number) {
        return KIND.of(number, RADIAN);
    }

    /**
     * Returns the number in rad.
     *
     * @return the number
     */
    public double toRadians() {
        return in(RADIAN);
    }

    /**
     * Makes a quantity from its number in deg.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Angle ofDegrees(double number) {
        return KIND.of(number, DEGREE);
    }

    /**
     * Returns the number in deg.
     *
     * @return the number
     */
    public double toDegrees() {
        return in(DEGREE);
    }

    @Override
    public Kind<Angle> kind() {
        return KIND;
    }
}
