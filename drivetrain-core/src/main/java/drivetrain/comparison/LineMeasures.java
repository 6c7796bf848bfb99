package drivetrain.comparison;

import drivetrain.assessment.CriticalSpeedAnswer;
import drivetrain.assessment.Question;
import drivetrain.combination.Combination;
import drivetrain.driveshaft.InstalledShaft;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import java.util.function.ToDoubleFunction;

/** Measures of the rear driveshaft in its line. */
final class LineMeasures {

    private static final Scale ANGLE = Scale.of(Angle.KIND, Display.JOINT_ANGLE);

    /** The least angle that is told from none, in radians: the residual is a root, and rounding leaves some 1e-8 of it in a line that cancels. */
    private static final double LEAST_ANGLE = 1e-7;

    private LineMeasures() {}

    /** The critical speed. */
    static Measure critical(LastCritical critical) {
        return Measure.of(
                "criticalSpeed",
                "critical speed",
                Better.HIGHER,
                Scale.of(AngularSpeed.KIND, Display.ROTATION),
                combination -> MeasureGround.of(CriticalSpeedAnswer.of(combination)),
                combination -> critical.of(combination).map(AngularSpeed::si));
    }

    /** The greatest operating angle of a joint. */
    static Measure jointAngle() {
        return angle("jointAngle", "joint angle", LineMeasures::greatest);
    }

    /** The equivalent residual angle. */
    static Measure residual() {
        return angle(
                "residualAngle",
                "residual angle",
                installed -> installed.residual().equivalentAngle().toRadians());
    }

    private static Measure angle(String key, String word, ToDoubleFunction<InstalledShaft> angle) {
        return Measure.of(
                key,
                word,
                Better.LOWER,
                ANGLE,
                combination -> MeasureGround.of(Question.SHAFTS.of(combination)),
                combination -> installed(combination).map(shaft -> Math.max(LEAST_ANGLE, angle.applyAsDouble(shaft))));
    }

    private static Outcome<InstalledShaft> installed(Combination combination) {
        return combination.shaft(ShaftPlace.REAR).installed();
    }

    private static double greatest(InstalledShaft installed) {
        double greatest = 0.0;
        for (int joint = 0; joint < installed.line().jointCount(); joint++) {
            greatest = Math.max(greatest, installed.line().angle(joint).toRadians());
        }
        return greatest;
    }
}
