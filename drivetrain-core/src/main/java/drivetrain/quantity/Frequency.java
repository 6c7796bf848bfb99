package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A frequency: of a vibration, in cycles per time. {@link AngularSpeed#toFrequency} gives that of a turn.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Frequency extends Magnitude<Frequency> {

    /** Hertz, the SI unit. */
    public static final Unit<Frequency> HERTZ = Unit.of("Hz", 1.0, "hertz", "cps");

    /** Kilohertz. */
    public static final Unit<Frequency> KILOHERTZ = Unit.of("kHz", 1e3);

    /** Cycle per minute. */
    public static final Unit<Frequency> CYCLE_PER_MINUTE = Unit.of("cpm", 1.0 / 60.0, "cycles/min", "cycle/min");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Frequency> KIND =
            Kind.of("frequency", Frequency::new, Map.of(), List.of(HERTZ, KILOHERTZ, CYCLE_PER_MINUTE));

    private Frequency(double si) {
        super("frequency", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Frequency parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in Hz.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Frequency ofHertz(double number) {
        return KIND.of(number, HERTZ);
    }

    /**
     * Returns the number in Hz.
     *
     * @return the number
     */
    public double toHertz() {
        return in(HERTZ);
    }

    /**
     * Makes a quantity from its number in kHz.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Frequency ofKilohertz(double number) {
        return KIND.of(number, KILOHERTZ);
    }

    /**
     * Returns the number in kHz.
     *
     * @return the number
     */
    public double toKilohertz() {
        return in(KILOHERTZ);
    }

    /**
     * Makes a quantity from its number in cpm.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Frequency ofCyclesPerMinute(double number) {
        return KIND.of(number, CYCLE_PER_MINUTE);
    }

    /**
     * Returns the number in cpm.
     *
     * @return the number
     */
    public double toCyclesPerMinute() {
        return in(CYCLE_PER_MINUTE);
    }

    /**
     * Returns the speed of rotation that comes round this often.
     *
     * @return one turn a cycle
     */
    public AngularSpeed toAngularSpeed() {
        return AngularSpeed.ofRadiansPerSecond(si() * 2.0 * Math.PI);
    }

    @Override
    public Kind<Frequency> kind() {
        return KIND;
    }
}
