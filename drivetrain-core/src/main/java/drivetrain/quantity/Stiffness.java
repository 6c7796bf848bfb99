package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A force per deflection: of a support, a spring, a rubber mount.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Stiffness extends Magnitude<Stiffness> {

    /** Newton per meter, the SI unit. */
    public static final Unit<Stiffness> NEWTON_PER_METER = Unit.of("N/m", 1.0);

    /** Newton per millimeter, which is a kilonewton per meter. */
    public static final Unit<Stiffness> NEWTON_PER_MILLIMETER = Unit.of("N/mm", 1e3, "kN/m");

    /** Pound-force per inch. */
    public static final Unit<Stiffness> POUND_FORCE_PER_INCH =
            Unit.of("lbf/in", 0.45359237 * 9.80665 / 0.0254, "lb/in", "lbs/in");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Stiffness> KIND = Kind.of(
            "stiffness",
            Stiffness::new,
            Map.of("mN/m", "MN/m for meganewtons, N/m; mN/m would be millinewtons"),
            List.of(NEWTON_PER_METER, NEWTON_PER_MILLIMETER, POUND_FORCE_PER_INCH));

    private Stiffness(double si) {
        super("stiffness", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Stiffness parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in N/m.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Stiffness ofNewtonsPerMeter(double number) {
        return KIND.of(number, NEWTON_PER_METER);
    }

    /**
     * Returns the number in N/m.
     *
     * @return the number
     */
    public double toNewtonsPerMeter() {
        return in(NEWTON_PER_METER);
    }

    /**
     * Makes a quantity from its number in N/mm.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Stiffness ofNewtonsPerMillimeter(double number) {
        return KIND.of(number, NEWTON_PER_MILLIMETER);
    }

    /**
     * Returns the number in N/mm.
     *
     * @return the number
     */
    public double toNewtonsPerMillimeter() {
        return in(NEWTON_PER_MILLIMETER);
    }

    /**
     * Makes a quantity from its number in lbf/in.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Stiffness ofPoundsForcePerInch(double number) {
        return KIND.of(number, POUND_FORCE_PER_INCH);
    }

    /**
     * Returns the number in lbf/in.
     *
     * @return the number
     */
    public double toPoundsForcePerInch() {
        return in(POUND_FORCE_PER_INCH);
    }

    @Override
    public Kind<Stiffness> kind() {
        return KIND;
    }
}
