package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A mass, or the load that a mass of that size puts on a tire or an axle.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Mass extends Magnitude<Mass> {

    /** Kilogram, the SI unit. */
    public static final Unit<Mass> KILOGRAM = Unit.of("kg", 1.0, "kilogram", "kilograms");

    /** Gram. */
    public static final Unit<Mass> GRAM = Unit.of("g", 1e-3, "gram", "grams");

    /** Avoirdupois pound, 0.453 592 37 kg exactly. */
    public static final Unit<Mass> POUND = Unit.of("lb", 0.45359237, "lbs", "pound", "pounds", "lbm");

    private static final String TONS_MEANT = "kg or lb; a ton is 1000 kg, 2000 lb or 2240 lb";
    private static final Map<String, String> TONS =
            Map.of("t", TONS_MEANT, "ton", TONS_MEANT, "tons", TONS_MEANT, "tonne", TONS_MEANT, "tonnes", TONS_MEANT);

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Mass> KIND = Kind.of("mass", Mass::new, TONS, List.of(KILOGRAM, GRAM, POUND));

    private Mass(double si) {
        super("mass", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Mass parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in kg.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Mass ofKilograms(double number) {
        return KIND.of(number, KILOGRAM);
    }

    /**
     * Returns the number in kg.
     *
     * @return the number
     */
    public double toKilograms() {
        return in(KILOGRAM);
    }

    /**
     * Makes a quantity from its number in g.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Mass ofGrams(double number) {
        return KIND.of(number, GRAM);
    }

    /**
     * Returns the number in g.
     *
     * @return the number
     */
    public double toGrams() {
        return in(GRAM);
    }

    /**
     * Makes a quantity from its number in lb.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Mass ofPounds(double number) {
        return KIND.of(number, POUND);
    }

    /**
     * Returns the number in lb.
     *
     * @return the number
     */
    public double toPounds() {
        return in(POUND);
    }

    @Override
    public Kind<Mass> kind() {
        return KIND;
    }
}
