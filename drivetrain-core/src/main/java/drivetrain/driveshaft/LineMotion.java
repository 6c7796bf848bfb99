package drivetrain.driveshaft;

import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularAcceleration;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * How unevenly a line turns: every joint's exact law, one after the other.
 *
 * @param speed the even speed of the end that drives
 * @param torsional the greatest angular acceleration of the driven end, the pinion, while the output turns evenly
 * @param drive the greatest angular acceleration of each piece while the output turns evenly
 * @param coast the same while the pinion turns evenly
 */
public record LineMotion(
        AngularSpeed speed,
        AngularAcceleration torsional,
        List<AngularAcceleration> drive,
        List<AngularAcceleration> coast) {

    private static final Source LAW = Source.derived("the pins of a joint's cross stand at a right angle: p . q = 0");
    private static final double QUARTER = Math.PI / 2.0;
    /** Steps over the half turn after which everything repeats; the peak between two steps is found by a parabola. */
    private static final int STEPS = 60;

    /** Copies the lists. */
    public LineMotion {
        drive = List.copyOf(drive);
        coast = List.copyOf(coast);
    }

    static LineMotion of(InstalledShaft installed, AngularSpeed speed) {
        double square = speed.requirePositive("shaft speed").toRadiansPerSecond();
        square *= square;
        int joints = installed.line().jointCount();
        double[] bends = new double[joints];
        double[] turns = new double[joints - 1];
        for (int i = 0; i < joints; i++) {
            bends[i] = installed.unevenAngle(i);
        }
        for (int i = 0; i < joints - 1; i++) {
            turns[i] = QUARTER + installed.mismatch(i);
        }
        double[] forward = peaks(bends, turns);
        double[] backward = peaks(reversed(bends), reversed(turns));
        List<AngularAcceleration> drive = new ArrayList<>();
        List<AngularAcceleration> coast = new ArrayList<>();
        for (int piece = 0; piece < joints - 1; piece++) {
            drive.add(acceleration(square * forward[piece]));
            coast.add(acceleration(square * backward[joints - 2 - piece]));
        }
        return new LineMotion(speed, acceleration(square * forward[joints - 1]), drive, coast);
    }

    private static AngularAcceleration acceleration(double value) {
        return AngularAcceleration.ofRadiansPerSecondSquared(value);
    }

    private static double[] reversed(double[] values) {
        double[] turned = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            turned[i] = values[values.length - 1 - i];
        }
        return turned;
    }

    /**
     * Works the accelerations out in the open.
     *
     * @param subject which shaft, and when it turns that fast
     * @return the speed and what it makes of the joints' laws
     */
    public Working working(String subject) {
        Working.Builder working = Working.of("motion of the " + subject)
                .input(subject + ", speed", "w", Figure.of(speed, Display.ROTATION), "road speed, tire and axle ratio")
                .step(
                        subject + ", torsional acceleration",
                        "greatest of d2a/dt2 at the pinion, the joints' laws tan a2 = cos b tan a1 one after the other",
                        Figure.of(torsional, Display.SHAKE));
        for (int i = 0; i < drive.size(); i++) {
            String piece = drive.size() == 1 ? "" : ", piece " + (i + 1);
            working.step(
                            subject + piece + ", inertial acceleration, drive",
                            "the same at the piece, the output turning evenly",
                            Figure.of(drive.get(i), Display.SHAKE))
                    .step(
                            subject + piece + ", inertial acceleration, coast",
                            "the same at the piece, the pinion turning evenly",
                            Figure.of(coast.get(i), Display.SHAKE));
        }
        return working.source(LAW).build();
    }

    /** The greatest acceleration behind each joint, for unit speed of the driving end. */
    static double[] peaks(double[] bends, double[] turns) {
        JointLaw[] laws = new JointLaw[bends.length];
        for (int i = 0; i < bends.length; i++) {
            laws[i] = JointLaw.ofRadians(bends[i]);
        }
        double[][] samples = new double[bends.length][STEPS];
        for (int step = 0; step < STEPS; step++) {
            double angle = step * Math.PI / STEPS;
            double ratio = 1.0;
            double acceleration = 0.0;
            for (int i = 0; i < laws.length; i++) {
                double joint = laws[i].ratio(angle);
                acceleration = joint * acceleration + laws[i].ratioSlope(angle) * ratio * ratio;
                ratio *= joint;
                angle = laws[i].driven(angle) + (i < turns.length ? turns[i] : 0.0);
                samples[i][step] = Math.abs(acceleration);
            }
        }
        double[] peaks = new double[bends.length];
        for (int i = 0; i < peaks.length; i++) {
            peaks[i] = peak(samples[i]);
        }
        return peaks;
    }

    /** The top of the parabola through the greatest sample and its neighbors. */
    private static double peak(double[] samples) {
        int top = 0;
        for (int i = 1; i < samples.length; i++) {
            if (samples[i] > samples[top]) {
                top = i;
            }
        }
        double here = samples[top];
        double before = samples[(top + samples.length - 1) % samples.length];
        double behind = samples[(top + 1) % samples.length];
        double bend = before - 2.0 * here + behind;
        double slope = behind - before;
        return bend < 0.0 ? here - slope * slope / (8.0 * bend) : here;
    }
}
