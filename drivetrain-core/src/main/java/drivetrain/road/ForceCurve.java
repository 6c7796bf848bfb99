package drivetrain.road;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Force;
import drivetrain.quantity.Speed;
import drivetrain.refusal.Refusal;
import java.util.function.Function;

/**
 * The driving force at full load in one gear, over the road speeds that the gear covers. Grip is not counted.
 *
 * <p>The law is asked only within the speeds and must be a pure function.
 */
public final class ForceCurve {

    private final String label;
    private final Speed lowest;
    private final Speed highest;
    private final Function<Speed, Force> law;

    private ForceCurve(String label, Speed lowest, Speed highest, Function<Speed, Force> law) {
        this.label = label;
        this.lowest = lowest;
        this.highest = highest;
        this.law = law;
    }

    /**
     * Makes a curve.
     *
     * @param label how a driver calls the gear
     * @param lowest the lowest road speed at which the law holds, zero or more
     * @param highest the highest one
     * @param law the force of all driven wheels at a road speed
     * @return the curve
     * @throws drivetrain.refusal.RefusedException if the speeds are not in order
     */
    public static ForceCurve of(String label, Speed lowest, Speed highest, Function<Speed, Force> law) {
        if (lowest.si() < 0.0 || !lowest.isLessThan(highest)) {
            throw Refusal.of("speeds of " + label, lowest + " to " + highest, "are not in order")
                    .allowing("0 or more, rising")
                    .asException();
        }
        return new ForceCurve(label, lowest, highest, law);
    }

    /**
     * Returns the name of the gear.
     *
     * @return the label
     */
    public String label() {
        return label;
    }

    /**
     * Returns the lowest road speed of the gear.
     *
     * @return the speed at the engine's slowest full-load speed; zero where a converter slips down to a standstill
     */
    public Speed lowest() {
        return lowest;
    }

    /**
     * Returns the highest road speed of the gear.
     *
     * @return the speed at the engine's highest speed
     */
    public Speed highest() {
        return highest;
    }

    /**
     * Returns the force at a road speed.
     *
     * @param speed the road speed
     * @return the force, or why there is none
     */
    public Outcome<Force> at(Speed speed) {
        if (speed.isLessThan(lowest)) {
            return Outcome.notEvaluated("the engine would turn too slowly for full load in " + label);
        }
        return speed.isGreaterThan(highest)
                ? Outcome.notEvaluated("the engine would turn faster than its torque is known in " + label)
                : Outcome.of(law.apply(speed));
    }

    /** The force in N at a speed in m/s, held below the lowest speed, where a clutch slips, and above the highest one. */
    double newtonsAt(double speed) {
        double inside = Math.min(Math.max(speed, lowest.si()), highest.si());
        return law.apply(Speed.ofMetersPerSecond(inside)).si();
    }
}
