package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * An electric potential difference.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Voltage extends Magnitude<Voltage> {

    /** Volt, the SI unit. */
    public static final Unit<Voltage> VOLT = Unit.of("V", 1.0, "volt", "volts");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Voltage> KIND = Kind.of("voltage", Voltage::new, Map.of(), List.of(VOLT));

    private Voltage(double si) {
        super("voltage", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Voltage parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in V.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Voltage ofVolts(double number) {
        return KIND.of(number, VOLT);
    }

    /**
     * Returns the number in V.
     *
     * @return the number
     */
    public double toVolts() {
        return in(VOLT);
    }

    @Override
    public Kind<Voltage> kind() {
        return KIND;
    }
}
