package drivetrain.road;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Force;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Time;
import java.util.List;

/**
 * A run from rest at full load through the gears.
 *
 * @param time from rest to the end
 * @param speed the speed at the end
 * @param distance the distance covered
 * @param marks when the speeds that were asked about were reached, slowest first; those beyond the end are missing
 * @param phases the run piece by piece: a gear, a shift, a gear
 */
public record SpeedRun(Time time, Speed speed, Length distance, List<Mark> marks, List<Phase> phases) {

    /** Copies the lists. */
    public SpeedRun {
        marks = List.copyOf(marks);
        phases = List.copyOf(phases);
    }

    /**
     * One gear of a run.
     *
     * @param curve its driving force
     * @param effectiveMass the mass that it accelerates, with what turns
     * @param upshift the speed at which the next gear is taken; not looked at in the last gear
     */
    public record Gear(ForceCurve curve, Mass effectiveMass, Speed upshift) {}

    /**
     * A speed that was passed.
     *
     * @param speed the speed
     * @param time when
     * @param distance where
     */
    public record Mark(Speed speed, Time time, Length distance) {}

    /**
     * A piece of a run with one effective mass.
     *
     * @param label the gear, or that gears are changed
     * @param start when it begins
     * @param end when it ends
     * @param entry the speed at its begin
     * @param exit the speed at its end
     * @param distance the distance covered in it
     * @param effectiveMass the mass that is accelerated
     * @param driveWork the work of the driving force, J
     * @param resistanceWork the work against rolling resistance, drag and grade, J
     */
    public record Phase(
            String label,
            Time start,
            Time end,
            Speed entry,
            Speed exit,
            Length distance,
            Mass effectiveMass,
            double driveWork,
            double resistanceWork) {}

    /**
     * How a run is driven.
     *
     * @param gears the gears in the order in which they are used, at least one
     * @param resistance what resists
     * @param grip the greatest force that the driven tires can put down
     * @param shiftTime how long no force drives while gears are changed, zero or more
     * @param coastingMass the mass that is slowed meanwhile
     */
    public record Plan(List<Gear> gears, RoadLoad resistance, Force grip, Time shiftTime, Mass coastingMass) {

        /** Copies the list. */
        public Plan {
            gears = List.copyOf(gears);
        }
    }

    /**
     * Runs up to a speed.
     *
     * @param plan how the run is driven
     * @param target the speed at which it ends, greater than zero
     * @param marks speeds whose times are wanted on the way
     * @return the run, or why the speed is not reached
     * @throws drivetrain.refusal.RefusedException if the target is not greater than zero
     */
    public static Outcome<SpeedRun> toSpeed(Plan plan, Speed target, List<Speed> marks) {
        double goal = target.requirePositive("target speed").si();
        return new SpeedRunIntegrator(plan, goal, Double.POSITIVE_INFINITY, marks).run();
    }

    /**
     * Runs over a distance.
     *
     * @param plan how the run is driven
     * @param distance the distance at which it ends, greater than zero
     * @param marks speeds whose times are wanted on the way
     * @return the run, or why the distance is not reached
     * @throws drivetrain.refusal.RefusedException if the distance is not greater than zero
     */
    public static Outcome<SpeedRun> overDistance(Plan plan, Length distance, List<Speed> marks) {
        double goal = distance.requirePositive("distance").si();
        return new SpeedRunIntegrator(plan, Double.POSITIVE_INFINITY, goal, marks).run();
    }
}
