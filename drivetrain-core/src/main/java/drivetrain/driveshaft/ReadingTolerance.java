package drivetrain.driveshaft;

import drivetrain.finding.Verdict;
import drivetrain.quantity.AngularSpeed;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * How wrong one reading of a survey may be before an answer changes.
 *
 * @param reading what was read
 * @param isAngle true for an angle, false for a length
 * @param torsional the error, in radians or meters, at which the verdict on the torsional acceleration changes; empty if none up to 5 degrees or 100 mm does
 * @param inertial the same for the inertial acceleration
 * @param residual how much the equivalent residual angle, in radians, changes by an error of half a degree or 5 mm, the worse way
 */
public record ReadingTolerance(
        String reading, boolean isAngle, OptionalDouble torsional, OptionalDouble inertial, double residual) {

    /** The error whose effect is shown: a careful reading with a plain inclinometer. */
    public static final double ANGLE_ERROR = Math.toRadians(0.5);

    /** The error whose effect is shown: a careful reading with a tape. */
    public static final double LENGTH_ERROR = 0.005;

    private static final double MOST_ANGLE = Math.toRadians(5.0);
    private static final double MOST_LENGTH = 0.1;
    private static final int STEPS = 50;
    private static final int HALVINGS = 20;

    /**
     * Tries every reading of a survey.
     *
     * @param survey the survey
     * @param place which axle the line runs to
     * @param shaft the shaft
     * @param speed the shaft speed at which the motion is judged
     * @param house the limits of the shop
     * @return one tolerance for each reading, in their order
     */
    public static List<ReadingTolerance> of(
            LineSurvey survey, ShaftPlace place, Driveshaft shaft, AngularSpeed speed, ShaftHouse house) {
        List<ReadingTolerance> tolerances = new ArrayList<>();
        Function<LineSurvey, InstalledShaft> fit = read -> new InstalledShaft(place, shaft, read.line(place));
        InstalledShaft present = fit.apply(survey);
        for (SurveyReading reading : survey.readings()) {
            Function<Double, InstalledShaft> misread =
                    error -> fit.apply(reading.misread().apply(error));
            double most = reading.isAngle() ? MOST_ANGLE : MOST_LENGTH;
            double small = reading.isAngle() ? ANGLE_ERROR : LENGTH_ERROR;
            tolerances.add(new ReadingTolerance(
                    reading.name(),
                    reading.isAngle(),
                    tolerated(misread, most, installed -> torsional(installed, speed, house)),
                    tolerated(misread, most, installed -> inertial(installed, speed, house)),
                    Math.max(effect(misread, present, small), effect(misread, present, -small))));
        }
        return tolerances;
    }

    private static double effect(Function<Double, InstalledShaft> misread, InstalledShaft present, double error) {
        try {
            return Math.abs(misread.apply(error).residual().radians()
                    - present.residual().radians());
        } catch (RefusedException impossible) {
            return 0.0;
        }
    }

    private static Verdict torsional(InstalledShaft installed, AngularSpeed speed, ShaftHouse house) {
        return LineChecks.motion(installed, installed.motionAt(speed), "", house)
                .get(0)
                .verdict();
    }

    private static Verdict inertial(InstalledShaft installed, AngularSpeed speed, ShaftHouse house) {
        List<drivetrain.finding.Finding> all = LineChecks.motion(installed, installed.motionAt(speed), "", house);
        return drivetrain.finding.Finding.worst(all.subList(1, all.size()));
    }

    /** The least error, either way, at which a verdict is no longer the one without error; found in steps, then halved. */
    private static OptionalDouble tolerated(
            Function<Double, InstalledShaft> misread, double most, Function<InstalledShaft, Verdict> judge) {
        Verdict present = judge.apply(misread.apply(0.0));
        for (int step = 1; step <= STEPS; step++) {
            double error = most * step / STEPS;
            if (changes(misread, judge, present, error)) {
                double kept = most * (step - 1) / STEPS;
                double changed = error;
                for (int i = 0; i < HALVINGS; i++) {
                    double middle = (kept + changed) / 2.0;
                    if (changes(misread, judge, present, middle)) {
                        changed = middle;
                    } else {
                        kept = middle;
                    }
                }
                return OptionalDouble.of(kept);
            }
        }
        return OptionalDouble.empty();
    }

    private static boolean changes(
            Function<Double, InstalledShaft> misread,
            Function<InstalledShaft, Verdict> judge,
            Verdict present,
            double error) {
        return differs(misread, judge, present, error) || differs(misread, judge, present, -error);
    }

    private static boolean differs(
            Function<Double, InstalledShaft> misread,
            Function<InstalledShaft, Verdict> judge,
            Verdict present,
            double error) {
        try {
            return judge.apply(misread.apply(error)) != present;
        } catch (RefusedException impossible) {
            return true;
        }
    }
}
