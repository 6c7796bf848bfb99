package drivetrain.comparison;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.quantity.Angle;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.Refusal;
import java.util.Map;
import java.util.Optional;

/** What is known only within a tolerance: a figure of a part, the measured points of a torque curve, or the angles read on a driveshaft line. */
public abstract sealed class Uncertain permits UncertainLever, UncertainCurve, UncertainAngles {

    private static final double GREATEST = 0.2;

    /** Only the classes of this package are made. */
    Uncertain() {}

    /**
     * Makes a figure of a part uncertain.
     *
     * @param lever the figure
     * @param fraction the tolerance either way, above 0 and at most 0.2 of the figure
     * @return the uncertain figure
     * @throws drivetrain.refusal.RefusedException if the tolerance is out of range
     */
    public static Uncertain of(Lever lever, double fraction) {
        return new UncertainLever(lever, requireFraction(lever.word(), fraction));
    }

    /**
     * Makes the torque at every measured point of the engine's curve uncertain.
     *
     * @param fraction the tolerance either way, above 0 and at most 0.2 of the torque
     * @return the uncertain points
     * @throws drivetrain.refusal.RefusedException if the tolerance is out of range
     */
    public static Uncertain torqueCurve(double fraction) {
        return new UncertainCurve(requireFraction(UncertainCurve.WORD, fraction));
    }

    /**
     * Makes every angle that was read on the line of the rear driveshaft uncertain.
     *
     * @param reach the tolerance either way, above 0 and at most 5 degrees
     * @return the uncertain angles
     * @throws drivetrain.refusal.RefusedException if the tolerance is out of range
     */
    public static Uncertain angles(Angle reach) {
        if (!(reach.toRadians() > 0.0 && reach.toDegrees() <= UncertainAngles.MOST_DEGREES)) {
            throw Refusal.of("tolerance", UncertainAngles.WORD + " " + reach, "is no tolerance")
                    .allowing("more than 0 deg, at most 5 deg")
                    .asException();
        }
        return new UncertainAngles(reach);
    }

    private static double requireFraction(String word, double fraction) {
        if (!(fraction > 0.0 && fraction <= GREATEST)) {
            throw Refusal.of("tolerance", word + " " + 100.0 * fraction + " %", "is no tolerance")
                    .allowing("more than 0 %, at most 20 %")
                    .asException();
        }
        return fraction;
    }

    /**
     * Returns the word by which it is named.
     *
     * @return the word
     */
    public abstract String word();

    /**
     * Says it with its tolerance.
     *
     * @param units the units
     * @return a phrase, such as {@code rolling circumference within 1.00 %}
     */
    public abstract String text(UnitSystem units);

    /** Why the package has nothing of the kind; empty if it has. */
    abstract Optional<String> missing(Combination combination);

    /** How many errors there are that are each at one end or the other at the extremes; errors that go together count once. */
    abstract int ends(Combination combination);

    /** How many errors there are. */
    abstract int draws(Combination combination);

    /** Puts errors into the parts of a package, each from -1 to 1 of the tolerance: as many as {@link #draws}, or as many as {@link #ends}. */
    abstract void apply(Map<Slot, Object> items, double[] errors);
}
