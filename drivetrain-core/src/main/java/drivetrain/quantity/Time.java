package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A length of time.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Time extends Magnitude<Time> {

    /** Second, the SI unit. */
    public static final Unit<Time> SECOND = Unit.of("s", 1.0, "sec", "second", "seconds");

    /** Minute. */
    public static final Unit<Time> MINUTE = Unit.of("min", 60.0, "minute", "minutes");

    /** Hour. */
    public static final Unit<Time> HOUR = Unit.of("h", 3600.0, "hr", "hour", "hours");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Time> KIND = Kind.of("time", Time::new, Map.of(), List.of(SECOND, MINUTE, HOUR));

    private Time(double si) {
        super("time", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Time parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in s.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Time ofSeconds(double number) {
        return KIND.of(number, SECOND);
    }

    /**
     * Returns the number in s.
     *
     * @return the number
     */
    public double toSeconds() {
        return in(SECOND);
    }

    /**
     * Makes a quantity from its number in min.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Time ofMinutes(double number) {
        return KIND.of(number, MINUTE);
    }

    /**
     * Returns the number in min.
     *
     * @return the number
     */
    public double toMinutes() {
        return in(MINUTE);
    }

    /**
     * Makes a quantity from its number in h.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Time ofHours(double number) {
        return KIND.of(number, HOUR);
    }

    /**
     * Returns the number in h.
     *
     * @return the number
     */
    public double toHours() {
        return in(HOUR);
    }

    @Override
    public Kind<Time> kind() {
        return KIND;
    }
}
