package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A flow of mass.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class MassFlow extends Magnitude<MassFlow> {

    /** Kilogram per second, the SI unit. */
    public static final Unit<MassFlow> KILOGRAM_PER_SECOND = Unit.of("kg/s", 1.0);

    /** Kilogram per hour. */
    public static final Unit<MassFlow> KILOGRAM_PER_HOUR = Unit.of("kg/h", 1.0 / 3600.0, "kg/hr");

    /** Gram per second. */
    public static final Unit<MassFlow> GRAM_PER_SECOND = Unit.of("g/s", 1e-3);

    /** Pound per hour. */
    public static final Unit<MassFlow> POUND_PER_HOUR =
            Unit.of("lb/h", 0.45359237 / 3600.0, "lb/hr", "lbs/h", "lbs/hr", "pph");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<MassFlow> KIND = Kind.of(
            "mass flow",
            MassFlow::new,
            Map.of(),
            List.of(KILOGRAM_PER_SECOND, KILOGRAM_PER_HOUR, GRAM_PER_SECOND, POUND_PER_HOUR));

    private MassFlow(double si) {
        super("mass flow", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static MassFlow parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in kg/s.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static MassFlow ofKilogramsPerSecond(double number) {
        return KIND.of(number, KILOGRAM_PER_SECOND);
    }

    /**
     * Returns the number in kg/s.
     *
     * @return the number
     */
    public double toKilogramsPerSecond() {
        return in(KILOGRAM_PER_SECOND);
    }

    /**
     * Makes a quantity from its number in kg/h.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static MassFlow ofKilogramsPerHour(double number) {
        return KIND.of(number, KILOGRAM_PER_HOUR);
    }

    /**
     * Returns the number in kg/h.
     *
     * @return the number
     */
    public double toKilogramsPerHour() {
        return in(KILOGRAM_PER_HOUR);
    }

    /**
     * Makes a quantity from its number in g/s.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static MassFlow ofGramsPerSecond(double number) {
        return KIND.of(number, GRAM_PER_SECOND);
    }

    /**
     * Returns the number in g/s.
     *
     * @return the number
     */
    public double toGramsPerSecond() {
        return in(GRAM_PER_SECOND);
    }

    /**
     * Makes a quantity from its number in lb/h.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static MassFlow ofPoundsPerHour(double number) {
        return KIND.of(number, POUND_PER_HOUR);
    }

    /**
     * Returns the number in lb/h.
     *
     * @return the number
     */
    public double toPoundsPerHour() {
        return in(POUND_PER_HOUR);
    }

    @Override
    public Kind<MassFlow> kind() {
        return KIND;
    }
}
