package drivetrain.road;

import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Force;
import drivetrain.quantity.Speed;

/**
 * The steepest grade that the driving force of one gear holds at a steady speed. Grip is not counted.
 *
 * @param label the gear
 * @param speed the road speed
 * @param drive the driving force there
 * @param reserve the driving force less the resistance on the grade that was asked about
 * @param steepest the grade, or that no grade is too steep for the force; downhill where the gear does not hold the level
 */
public record GradeHeld(String label, Speed speed, Force drive, Force reserve, Outcome<Grade> steepest) {

    private static final Source SOURCE = Source.derived(
            "driving force = drag + weight (sin a + c cos a); a = arcsin(f / sqrt(1 + c^2)) - arctan c with f = (F - D) / (m g)");

    /**
     * Finds the grade.
     *
     * @param curve the driving force
     * @param load the resistance, on the grade for which the reserve is wanted
     * @param speed the road speed
     * @return the grade held, or why the gear does not cover the speed
     */
    public static Outcome<GradeHeld> of(ForceCurve curve, RoadLoad load, Speed speed) {
        return curve.at(speed).map(drive -> {
            Force reserve = Force.ofNewtons(drive.si() - load.totalNewtons(speed.si()));
            return new GradeHeld(curve.label(), speed, drive, reserve, steepest(drive.si(), load, speed.si()));
        });
    }

    private static Outcome<Grade> steepest(double drive, RoadLoad load, double speed) {
        double coefficient =
                RollingResistance.at(load.surface().rolling(), load.surface().hard(), speed);
        double share = (drive - load.dragNewtons(speed)) / load.weightNewtons();
        double sine = share / Math.hypot(1.0, coefficient);
        if (sine >= 1.0) {
            return Outcome.notEvaluated(
                    "the driving force exceeds the weight: grip and balance set the grade, not the engine");
        }
        double slope = Math.asin(Math.max(-1.0, sine)) - Math.atan(coefficient);
        return Math.abs(slope) < 0.5 * Math.PI - 1e-9
                ? Outcome.of(new Grade(Math.tan(slope)))
                : Outcome.notEvaluated(
                        "the driving force equals the weight: grip and balance set the grade, not the engine");
    }

    /**
     * Returns the share of the driving force that must be left over, or the gear counts as barely holding.
     *
     * @return a fraction from the table of limits
     */
    public static double leastReserve() {
        return RoadLimit.of("reserve-marginal").most();
    }

    /**
     * Returns where that share comes from.
     *
     * @return the source
     */
    public static Source reserveRule() {
        return RoadLimit.of("reserve-marginal").source();
    }

    /**
     * Tells whether the gear holds the grade that was asked about.
     *
     * @return true if force is left over or just suffices
     */
    public boolean holds() {
        return reserve.si() >= 0.0;
    }

    /**
     * Shows how the grade is worked out.
     *
     * @param load the resistance
     * @return the working
     */
    public Working working(RoadLoad load) {
        Working.Builder working = Working.of("grade held in " + label)
                .from(load.working(speed))
                .input("driving force in " + label, "F_t", Figure.of(drive, Display.FORCE), "engine and gears")
                .step("force left over in " + label, "F_t - F", Figure.of(reserve, Display.FORCE));
        steepest.value()
                .ifPresent(grade -> working.step(
                        "grade held in " + label,
                        "a = arcsin((F_t - D) / (m g sqrt(1 + c^2))) - arctan c, shown as 100 tan a",
                        grade.figure()));
        return working.source(SOURCE).build();
    }
}
