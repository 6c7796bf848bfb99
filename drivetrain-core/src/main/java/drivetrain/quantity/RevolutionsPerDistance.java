package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * How often a wheel turns along a distance, as tire makers publish it.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class RevolutionsPerDistance extends Magnitude<RevolutionsPerDistance> {

    /** Revolution per meter, the SI unit. */
    public static final Unit<RevolutionsPerDistance> PER_METER = Unit.of("rev/m", 1.0);

    /** Revolution per kilometer. */
    public static final Unit<RevolutionsPerDistance> PER_KILOMETER = Unit.of("rev/km", 1e-3, "revs/km", "r/km", "/km");

    /** Revolution per statute mile. */
    public static final Unit<RevolutionsPerDistance> PER_MILE =
            Unit.of("rev/mile", 1.0 / 1609.344, "revs/mile", "rev/mi", "revs/mi", "r/mile", "/mile", "/mi");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<RevolutionsPerDistance> KIND = Kind.of(
            "revolutions per distance",
            RevolutionsPerDistance::new,
            Map.of(),
            List.of(PER_METER, PER_KILOMETER, PER_MILE));

    private RevolutionsPerDistance(double si) {
        super("revolutions per distance", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static RevolutionsPerDistance parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in rev/m.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static RevolutionsPerDistance ofPerMeter(double number) {
        return KIND.of(number, PER_METER);
    }

    /**
     * Returns the number in rev/m.
     *
     * @return the number
     */
    public double toPerMeter() {
        return in(PER_METER);
    }

    /**
     * Makes a quantity from its number in rev/km.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static RevolutionsPerDistance ofPerKilometer(double number) {
        return KIND.of(number, PER_KILOMETER);
    }

    /**
     * Returns the number in rev/km.
     *
     * @return the number
     */
    public double toPerKilometer() {
        return in(PER_KILOMETER);
    }

    /**
     * Makes a quantity from its number in rev/mile.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static RevolutionsPerDistance ofPerMile(double number) {
        return KIND.of(number, PER_MILE);
    }

    /**
     * Returns the number in rev/mile.
     *
     * @return the number
     */
    public double toPerMile() {
        return in(PER_MILE);
    }

    /**
     * Returns the distance covered in one revolution.
     *
     * @return the rolling circumference
     * @throws drivetrain.refusal.RefusedException if this is zero
     */
    public Length perRevolution() {
        return Length.ofMeters(1.0 / si());
    }

    @Override
    public Kind<RevolutionsPerDistance> kind() {
        return KIND;
    }
}
