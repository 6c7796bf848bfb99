package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A speed of rotation: of an engine, a shaft, a wheel.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class AngularSpeed extends Magnitude<AngularSpeed> {

    /** Radian per second, the SI unit. */
    public static final Unit<AngularSpeed> RADIAN_PER_SECOND = Unit.of("rad/s", 1.0);

    /** Revolution per minute, pi/30 rad/s. */
    public static final Unit<AngularSpeed> RPM =
            Unit.of("rpm", Math.PI / 30.0, "r/min", "rev/min", "revs/min", "1/min", "min-1");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<AngularSpeed> KIND =
            Kind.of("rotational speed", AngularSpeed::new, Map.of(), List.of(RADIAN_PER_SECOND, RPM));

    private AngularSpeed(double si) {
        super("rotational speed", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static AngularSpeed parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in rad/s.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static AngularSpeed ofRadiansPerSecond(double number) {
        return KIND.of(number, RADIAN_PER_SECOND);
    }

    /**
     * Returns the number in rad/s.
     *
     * @return the number
     */
    public double toRadiansPerSecond() {
        return in(RADIAN_PER_SECOND);
    }

    /**
     * Makes a quantity from its number in rpm.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static AngularSpeed ofRpm(double number) {
        return KIND.of(number, RPM);
    }

    /**
     * Returns the number in rpm.
     *
     * @return the number
     */
    public double toRpm() {
        return in(RPM);
    }

    /**
     * Returns the speed of a point at a radius, or of a wheel that rolls at this speed of rotation.
     *
     * @param radius the radius; for a wheel its rolling radius
     * @return the product of this speed and the radius
     */
    public Speed atRadius(Length radius) {
        return Speed.ofMetersPerSecond(si() * radius.si());
    }

    /**
     * Returns how often a part that turns at this speed comes round.
     *
     * @return one cycle a turn
     */
    public Frequency toFrequency() {
        return Frequency.ofHertz(si() / (2.0 * Math.PI));
    }

    @Override
    public Kind<AngularSpeed> kind() {
        return KIND;
    }
}
