package drivetrain.driveshaft;

import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A line turned by its crosses: nothing but pins in space, each at a right angle to the other pin of its cross and to its own shaft. It shares no formula with the code
 * under test and stands for a kinematic simulation.
 */
final class SpinningLine {

    private static final double STEP = 1e-4;

    private final Vector3D[] axes;
    private final double[] phases;

    SpinningLine(Vector3D[] axes, double[] phases) {
        this.axes = axes.clone();
        this.phases = phases.clone();
    }

    static SpinningLine of(InstalledShaft installed) {
        int joints = installed.line().jointCount();
        Vector3D[] axes = new Vector3D[joints + 1];
        for (int i = 0; i <= joints; i++) {
            axes[i] = installed.line().axis(i);
        }
        double[] phases = new double[joints - 1];
        for (int i = 0; i < phases.length; i++) {
            phases[i] = installed.phase(i);
        }
        return new SpinningLine(axes, phases);
    }

    /** Where the pin of the last yoke points when the first one has turned by an angle. */
    private Vector3D lastPin(double turned, int lastJoint) {
        Vector3D pin = rotated(axes[0].orthogonal(), axes[0], turned);
        for (int joint = 0; joint <= lastJoint; joint++) {
            Vector3D driven = pin.crossProduct(axes[joint + 1]).normalize();
            pin = joint < phases.length ? rotated(driven, axes[joint + 1], phases[joint]) : driven;
            if (joint == lastJoint) {
                return driven;
            }
        }
        return pin;
    }

    private static Vector3D rotated(Vector3D vector, Vector3D axis, double angle) {
        return new Rotation(axis, angle, RotationConvention.VECTOR_OPERATOR).applyTo(vector);
    }

    /** How far a shaft turns while the first one turns by a small step. */
    private double turned(double from, double to, int joint) {
        Vector3D before = lastPin(from, joint);
        Vector3D after = lastPin(to, joint);
        return Math.atan2(before.crossProduct(after).dotProduct(axes[joint + 1]), before.dotProduct(after));
    }

    /** Second derivative of the angle of the shaft behind a joint, for unit speed. */
    double acceleration(double at, int joint) {
        return (turned(at, at + STEP, joint) - turned(at - STEP, at, joint)) / (STEP * STEP);
    }

    double peakAcceleration(int joint) {
        double peak = 0.0;
        for (int i = 0; i < 2000; i++) {
            peak = Math.max(peak, Math.abs(acceleration(i * Math.PI / 2000.0, joint)));
        }
        return peak;
    }

    SpinningLine reversed() {
        Vector3D[] turned = new Vector3D[axes.length];
        for (int i = 0; i < axes.length; i++) {
            turned[i] = axes[axes.length - 1 - i].negate();
        }
        double[] back = new double[phases.length];
        for (int i = 0; i < phases.length; i++) {
            back[i] = phases[phases.length - 1 - i];
        }
        return new SpinningLine(turned, back);
    }
}
