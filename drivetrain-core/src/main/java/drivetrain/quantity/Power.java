package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A mechanical power.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Power extends Magnitude<Power> {

    /** Watt, the SI unit. */
    public static final Unit<Power> WATT = Unit.of("W", 1.0, "watt", "watts");

    /** Kilowatt. */
    public static final Unit<Power> KILOWATT = Unit.of("kW", 1e3, "kilowatt", "kilowatts");

    /** Mechanical horsepower, 550 ft·lbf/s. */
    public static final Unit<Power> HORSEPOWER =
            Unit.of("hp", 550.0 * 0.45359237 * 9.80665 * 0.3048, "bhp", "horsepower");

    /** Metric horsepower, 75 kgf·m/s; 1.4 % less than hp. */
    public static final Unit<Power> METRIC_HORSEPOWER = Unit.of("PS", 75.0 * 9.80665);

    private static final String HORSEPOWER_MEANT = "PS for the metric horsepower, hp for the mechanical one";

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Power> KIND = Kind.of(
            "power",
            Power::new,
            Map.of("cv", HORSEPOWER_MEANT, "ch", HORSEPOWER_MEANT),
            List.of(WATT, KILOWATT, HORSEPOWER, METRIC_HORSEPOWER));

    private Power(double si) {
        super("power", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Power parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in W.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Power ofWatts(double number) {
        return KIND.of(number, WATT);
    }

    /**
     * Returns the number in W.
     *
     * @return the number
     */
    public double toWatts() {
        return in(WATT);
    }

    /**
     * Makes a quantity from its number in kW.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Power ofKilowatts(double number) {
        return KIND.of(number, KILOWATT);
    }

    /**
     * Returns the number in kW.
     *
     * @return the number
     */
    public double toKilowatts() {
        return in(KILOWATT);
    }

    /**
     * Makes a quantity from its number in hp.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Power ofHorsepower(double number) {
        return KIND.of(number, HORSEPOWER);
    }

    /**
     * Returns the number in hp.
     *
     * @return the number
     */
    public double toHorsepower() {
        return in(HORSEPOWER);
    }

    /**
     * Makes a quantity from its number in PS.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Power ofMetricHorsepower(double number) {
        return KIND.of(number, METRIC_HORSEPOWER);
    }

    /**
     * Returns the number in PS.
     *
     * @return the number
     */
    public double toMetricHorsepower() {
        return in(METRIC_HORSEPOWER);
    }

    /**
     * Returns the torque that makes this power at a speed of rotation.
     *
     * @param speed the speed of rotation, not zero
     * @return the quotient
     * @throws drivetrain.refusal.RefusedException if the speed is zero
     */
    public Torque torqueAt(AngularSpeed speed) {
        return Torque.ofNewtonMeters(si() / speed.si());
    }

    @Override
    public Kind<Power> kind() {
        return KIND;
    }
}
