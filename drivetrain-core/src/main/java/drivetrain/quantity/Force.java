package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A force.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Force extends Magnitude<Force> {

    /** Newton, the SI unit. */
    public static final Unit<Force> NEWTON = Unit.of("N", 1.0, "newton", "newtons");

    /** Kilonewton. */
    public static final Unit<Force> KILONEWTON = Unit.of("kN", 1e3, "kilonewton", "kilonewtons");

    /** Pound-force, one pound under standard gravity of 9.806 65 m/s². */
    public static final Unit<Force> POUND_FORCE = Unit.of("lbf", 0.45359237 * 9.80665, "pound-force", "pounds-force");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Force> KIND =
            Kind.of("force", Force::new, Map.of(), List.of(NEWTON, KILONEWTON, POUND_FORCE));

    private Force(double si) {
        super("force", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Force parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in N.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Force ofNewtons(double number) {
        return KIND.of(number, NEWTON);
    }

    /**
     * Returns the number in N.
     *
     * @return the number
     */
    public double toNewtons() {
        return in(NEWTON);
    }

    /**
     * Makes a quantity from its number in kN.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Force ofKilonewtons(double number) {
        return KIND.of(number, KILONEWTON);
    }

    /**
     * Returns the number in kN.
     *
     * @return the number
     */
    public double toKilonewtons() {
        return in(KILONEWTON);
    }

    /**
     * Makes a quantity from its number in lbf.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Force ofPoundsForce(double number) {
        return KIND.of(number, POUND_FORCE);
    }

    /**
     * Returns the number in lbf.
     *
     * @return the number
     */
    public double toPoundsForce() {
        return in(POUND_FORCE);
    }

    @Override
    public Kind<Force> kind() {
        return KIND;
    }
}
