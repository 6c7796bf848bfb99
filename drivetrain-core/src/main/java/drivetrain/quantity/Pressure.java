package drivetrain.quantity;

import java.util.List;
import java.util.Map;

/**
 * A pressure, a stress or a modulus of elasticity. Whether a pressure it is absolute or against the atmosphere is said where it is used.
 *
 * <p>Any finite value; a value that is impossible for a part is refused by the part. Factors: NIST Special Publication 811
 * (2008), appendix B, written as the definitions that they follow from.
 */
public final class Pressure extends Magnitude<Pressure> {

    /** Pascal, the SI unit. */
    public static final Unit<Pressure> PASCAL = Unit.of("Pa", 1.0, "pascal", "pascals");

    /** Hectopascal, which is a millibar. */
    public static final Unit<Pressure> HECTOPASCAL = Unit.of("hPa", 1e2, "mbar");

    /** Kilopascal. */
    public static final Unit<Pressure> KILOPASCAL = Unit.of("kPa", 1e3);

    /** Megapascal. */
    public static final Unit<Pressure> MEGAPASCAL = Unit.of("MPa", 1e6);

    /** Gigapascal, in which moduli of elasticity are given. */
    public static final Unit<Pressure> GIGAPASCAL = Unit.of("GPa", 1e9);

    /** Bar, 100 kPa exactly. */
    public static final Unit<Pressure> BAR = Unit.of("bar", 1e5, "bars");

    /** Pound-force per square inch. */
    public static final Unit<Pressure> PSI =
            Unit.of("psi", 0.45359237 * 9.80665 / (0.0254 * 0.0254), "lbf/in2", "lb/in2");

    /** Thousand pounds-force per square inch, in which strengths are given. */
    public static final Unit<Pressure> KSI = Unit.of("ksi", 1e3 * 0.45359237 * 9.80665 / (0.0254 * 0.0254), "kpsi");

    /** Million pounds-force per square inch, in which moduli of elasticity are given. */
    public static final Unit<Pressure> MEGA_PSI =
            Unit.of("Msi", 1e6 * 0.45359237 * 9.80665 / (0.0254 * 0.0254), "Mpsi");

    private static final Map<String, String> NOT_MEGA = Map.of(
            "mPa", "MPa for megapascals; mPa would be millipascals",
            "mpa", "MPa for megapascals; mPa would be millipascals",
            "Mbar", "mbar for millibars; Mbar would be megabars");

    /** The kind: its name, its units and how it is read. */
    public static final Kind<Pressure> KIND = Kind.of(
            "pressure",
            Pressure::new,
            NOT_MEGA,
            List.of(PASCAL, HECTOPASCAL, KILOPASCAL, MEGAPASCAL, GIGAPASCAL, BAR, PSI, KSI, MEGA_PSI));

    private Pressure(double si) {
        super("pressure", si);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as one that {@link #toString()} printed
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit
     */
    public static Pressure parse(CharSequence text) {
        return KIND.parse(text);
    }

    /**
     * Makes a quantity from its number in Pa.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Pressure ofPascals(double number) {
        return KIND.of(number, PASCAL);
    }

    /**
     * Returns the number in Pa.
     *
     * @return the number
     */
    public double toPascals() {
        return in(PASCAL);
    }

    /**
     * Makes a quantity from its number in hPa.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Pressure ofHectopascals(double number) {
        return KIND.of(number, HECTOPASCAL);
    }

    /**
     * Returns the number in hPa.
     *
     * @return the number
     */
    public double toHectopascals() {
        return in(HECTOPASCAL);
    }

    /**
     * Makes a quantity from its number in kPa.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Pressure ofKilopascals(double number) {
        return KIND.of(number, KILOPASCAL);
    }

    /**
     * Returns the number in kPa.
     *
     * @return the number
     */
    public double toKilopascals() {
        return in(KILOPASCAL);
    }

    /**
     * Makes a quantity from its number in MPa.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Pressure ofMegapascals(double number) {
        return KIND.of(number, MEGAPASCAL);
    }

    /**
     * Returns the number in MPa.
     *
     * @return the number
     */
    public double toMegapascals() {
        return in(MEGAPASCAL);
    }

    /**
     * Makes a quantity from its number in bar.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Pressure ofBar(double number) {
        return KIND.of(number, BAR);
    }

    /**
     * Returns the number in bar.
     *
     * @return the number
     */
    public double toBar() {
        return in(BAR);
    }

    /**
     * Makes a quantity from its number in psi.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Pressure ofPsi(double number) {
        return KIND.of(number, PSI);
    }

    /**
     * Returns the number in psi.
     *
     * @return the number
     */
    public double toPsi() {
        return in(PSI);
    }

    /**
     * Makes a quantity from its number in GPa.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Pressure ofGigapascals(double number) {
        return KIND.of(number, GIGAPASCAL);
    }

    /**
     * Returns the number in GPa.
     *
     * @return the number
     */
    public double toGigapascals() {
        return in(GIGAPASCAL);
    }

    /**
     * Makes a quantity from its number in ksi.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Pressure ofKsi(double number) {
        return KIND.of(number, KSI);
    }

    /**
     * Returns the number in ksi.
     *
     * @return the number
     */
    public double toKsi() {
        return in(KSI);
    }

    /**
     * Makes a quantity from its number in Msi.
     *
     * @param number a finite number
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite
     */
    public static Pressure ofMegaPsi(double number) {
        return KIND.of(number, MEGA_PSI);
    }

    /**
     * Returns the number in Msi.
     *
     * @return the number
     */
    public double toMegaPsi() {
        return in(MEGA_PSI);
    }

    @Override
    public Kind<Pressure> kind() {
        return KIND;
    }
}
