package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A torque; signed.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Torque extends Magnitude<Torque> {

    /** Newton meter, the SI unit. */
    public static final Unit<Torque> NEWTON_METER = Unit.signed(
            "N\u00B7m",
            "Nm",
            1.0,
            "N m",
            "N-m",
            "N.m",
            "newton meter",
            "newton meters",
            "newton metre",
            "newton metres");

    /** Pound-foot, one pound-force at one foot. */
    public static final Unit<Torque> POUND_FOOT = Unit.signed(
            "lb\u00B7ft",
            "lb-ft",
            0.45359237 * 9.80665 * 0.3048,
            "lbf\u00B7ft",
            "lb ft",
            "lbft",
            "ft-lb",
            "ft\u00B7lb",
            "ft lb",
            "ftlb",
            "lbf-ft",
            "ft\u00B7lbf",
            "ft-lbf",
            "lbf ft",
            "ft lbf",
            "lbs-ft",
            "lbs ft",
            "ft-lbs",
            "ft lbs",
            "ftlbs",
            "pound-foot",
            "pound-feet",
            "foot-pound",
            "foot-pounds");

    /** Pound-inch, one pound-force at one inch. */
    public static final Unit<Torque> POUND_INCH = Unit.signed(
            "lb\u00B7in",
            "lb-in",
            0.45359237 * 9.80665 * 0.0254,
            "lbf\u00B7in",
            "lb in",
            "in-lb",
            "in\u00B7lb",
            "in lb",
            "lbf-in",
            "in\u00B7lbf",
            "in-lbf",
            "lbs-in",
            "in-lbs",
            "in lbs",
            "pound-inch",
            "pound-inches",
            "inch-pound",
            "inch-pounds");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Torque> KIND =
            Kind.of("torque", Torque::new, Map.of(), List.of(NEWTON_METER, POUND_FOOT, POUND_INCH));

    private Torque(double si) {
        super("torque", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Torque parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in N·m.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Torque ofNewtonMeters(double number) {
        return KIND.of(number, NEWTON_METER);
    }

    /**
     * Returns the number in N·m.
     *
     * @return the number
     */
    public double toNewtonMeters() {
        return in(NEWTON_METER);
    }

    /**
     * Makes a quantity from its number in lb·ft.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Torque ofPoundFeet(double number) {
        return KIND.of(number, POUND_FOOT);
    }

    /**
     * Returns the number in lb·ft.
     *
     * @return the number
     */
    public double toPoundFeet() {
        return in(POUND_FOOT);
    }

    /**
     * Makes a quantity from its number in lb·in.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Torque ofPoundInches(double number) {
        return KIND.of(number, POUND_INCH);
    }

    /**
     * Returns the number in lb·in.
     *
     * @return the number
     */
    public double toPoundInches() {
        return in(POUND_INCH);
    }

    /**
     * Returns the power of this torque at a speed of rotation.
     *
     * @param speed the speed of rotation
     * @return the product
     */
    public Power at(AngularSpeed speed) {
        return Power.ofWatts(si() * speed.si());
    }

    @Override
    public Kind<Torque> kind() {
        return KIND;
    }
}
