package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * How fast the pump of a torque converter turns for the torque that it takes up: speed over the square root of torque.
 *
 * <p>The trade calls it K. Its number depends on the units: K in rpm/sqrt(N-m) is K in rpm/sqrt(lb-ft) divided by sqrt(1.3558) = 1.1644. Any finite value; a
 * value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811 (2008), appendix B, written as the definitions that
 * they follow from.
 */
public final class CapacityFactor extends Magnitude<CapacityFactor> {

    /** Radian per second over the root of a newton meter, the SI unit. */
    public static final Unit<CapacityFactor> RADIAN_PER_SECOND_PER_ROOT_NEWTON_METER = Unit.of("rad/s/sqrt(N-m)", 1.0);

    /** Revolutions per minute over the root of a pound-foot, the unit of American converter sheets. */
    public static final Unit<CapacityFactor> RPM_PER_ROOT_POUND_FOOT = Unit.of(
            "rpm/sqrt(lb-ft)",
            Math.PI / 30.0 / Math.sqrt(0.3048 * 0.45359237 * 9.80665),
            "rpm/sqrt(lbf-ft)",
            "rpm/sqrt(ft-lb)");

    /** Revolutions per minute over the root of a newton meter. */
    public static final Unit<CapacityFactor> RPM_PER_ROOT_NEWTON_METER =
            Unit.of("rpm/sqrt(N-m)", Math.PI / 30.0, "rpm/sqrt(Nm)");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<CapacityFactor> KIND = Kind.of(
            "capacity factor",
            CapacityFactor::new,
            Map.of(),
            List.of(RADIAN_PER_SECOND_PER_ROOT_NEWTON_METER, RPM_PER_ROOT_POUND_FOOT, RPM_PER_ROOT_NEWTON_METER));

    private CapacityFactor(double si) {
        super("capacity factor", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static CapacityFactor parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in rad/s/sqrt(N-m).
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static CapacityFactor ofRadiansPerSecondPerRootNewtonMeter(double number) {
        return KIND.of(number, RADIAN_PER_SECOND_PER_ROOT_NEWTON_METER);
    }

    /**
     * Returns the number in rad/s/sqrt(N-m).
     *
     * @return the number
     */
    public double toRadiansPerSecondPerRootNewtonMeter() {
        return in(RADIAN_PER_SECOND_PER_ROOT_NEWTON_METER);
    }

    /**
     * Makes a quantity from its number in rpm/sqrt(lb-ft).
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static CapacityFactor ofRpmPerRootPoundFoot(double number) {
        return KIND.of(number, RPM_PER_ROOT_POUND_FOOT);
    }

    /**
     * Returns the number in rpm/sqrt(lb-ft).
     *
     * @return the number
     */
    public double toRpmPerRootPoundFoot() {
        return in(RPM_PER_ROOT_POUND_FOOT);
    }

    /**
     * Makes a quantity from its number in rpm/sqrt(N-m).
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static CapacityFactor ofRpmPerRootNewtonMeter(double number) {
        return KIND.of(number, RPM_PER_ROOT_NEWTON_METER);
    }

    /**
     * Returns the number in rpm/sqrt(N-m).
     *
     * @return the number
     */
    public double toRpmPerRootNewtonMeter() {
        return in(RPM_PER_ROOT_NEWTON_METER);
    }

    @Override
    public Kind<CapacityFactor> kind() {
        return KIND;
    }
}
