package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * An angular acceleration, such as that with which a joint at an angle shakes a shaft.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class AngularAcceleration extends Magnitude<AngularAcceleration> {

    /** Radian per second squared, the SI unit. */
    public static final Unit<AngularAcceleration> RADIAN_PER_SECOND_SQUARED =
            Unit.of("rad/s2", 1.0, "rad/s\u00B2", "rad/s^2");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<AngularAcceleration> KIND =
            Kind.of("angular acceleration", AngularAcceleration::new, Map.of(), List.of(RADIAN_PER_SECOND_SQUARED));

    private AngularAcceleration(double si) {
        super("angular acceleration", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static AngularAcceleration parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in rad/s2.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static AngularAcceleration ofRadiansPerSecondSquared(double number) {
        return KIND.of(number, RADIAN_PER_SECOND_SQUARED);
    }

    /**
     * Returns the number in rad/s2.
     *
     * @return the number
     */
    public double toRadiansPerSecondSquared() {
        return in(RADIAN_PER_SECOND_SQUARED);
    }

    @Override
    public Kind<AngularAcceleration> kind() {
        return KIND;
    }
}
