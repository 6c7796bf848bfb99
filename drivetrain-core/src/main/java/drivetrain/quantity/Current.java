package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * An electric current.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Current extends Magnitude<Current> {

    /** Ampere, the SI unit. */
    public static final Unit<Current> AMPERE = Unit.of("A", 1.0, "amp", "amps", "ampere", "amperes");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Current> KIND = Kind.of("current", Current::new, Map.of(), List.of(AMPERE));

    private Current(double si) {
        super("current", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Current parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in A.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Current ofAmperes(double number) {
        return KIND.of(number, AMPERE);
    }

    /**
     * Returns the number in A.
     *
     * @return the number
     */
    public double toAmperes() {
        return in(AMPERE);
    }

    @Override
    public Kind<Current> kind() {
        return KIND;
    }
}
