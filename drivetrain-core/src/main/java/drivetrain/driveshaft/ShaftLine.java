package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** A line of shafts in space: joint centers, and the axes of output, pieces and pinion, all pointing toward the axle. Immutable. */
public final class ShaftLine {

    private static final double SHORTEST = 0.05;
    private static final double LONGEST = 5.0;
    private static final double MOST_ANGLE = Math.toRadians(45.0);

    /** Sine of the angle below which a joint has no plane. */
    private static final double STRAIGHT = 1e-12;

    private final Vector3D[] centers;
    private final Vector3D[] axes;

    private ShaftLine(Vector3D[] centers, Vector3D[] axes) {
        this.centers = centers;
        this.axes = axes;
    }

    /** Makes a line from its joint centers and the unit vectors of output and pinion; refuses what cannot be built. */
    static ShaftLine of(List<Vector3D> centers, Vector3D output, Vector3D pinion) {
        ShaftLine line = connect(centers.toArray(Vector3D[]::new), output, pinion);
        for (int i = 0; i < line.jointCount(); i++) {
            requireBend(line, i);
        }
        return line;
    }

    private static void requireBend(ShaftLine line, int joint) {
        double angle = line.bend(joint);
        if (angle > MOST_ANGLE) {
            throw Refusal.of(
                            "joint " + (joint + 1),
                            String.format(java.util.Locale.ROOT, "%.1f deg", Math.toDegrees(angle)),
                            "bends more than a joint of a driveshaft can")
                    .allowing("up to 45 deg")
                    .asException();
        }
    }

    private static ShaftLine connect(Vector3D[] centers, Vector3D output, Vector3D pinion) {
        Vector3D[] axes = new Vector3D[centers.length + 1];
        axes[0] = output;
        for (int i = 1; i < centers.length; i++) {
            axes[i] = axis(centers, i);
        }
        axes[centers.length] = pinion;
        return new ShaftLine(centers, axes);
    }

    /** The axis of a piece, counted from 1. */
    private static Vector3D axis(Vector3D[] centers, int i) {
        Vector3D span = centers[i].subtract(centers[i - 1]);
        double length = span.getNorm();
        if (length < SHORTEST || length > LONGEST) {
            throw Refusal.of(
                            "shaft " + i,
                            String.format(java.util.Locale.ROOT, "%.1f mm", 1000.0 * length),
                            length < 1e-6
                                    ? "has no length: the joint centers coincide"
                                    : "cannot be the distance of two joint centers")
                    .allowing("50 mm to 5 m between joint centers")
                    .asException();
        }
        return span.scalarMultiply(1.0 / length);
    }

    /** The same line with the axle moved; no bend is refused, so that a sweep over a travel can go on. */
    ShaftLine withPinion(Vector3D center, Vector3D axis) {
        int last = centers.length - 1;
        Vector3D[] moved = centers.clone();
        moved[last] = center;
        Vector3D[] turned = axes.clone();
        turned[last] = axis(moved, last);
        turned[last + 1] = axis;
        return new ShaftLine(moved, turned);
    }

    /** The same line with the pinion's axis turned about its joint center. */
    ShaftLine withPinionAxis(Vector3D axis) {
        return withPinion(centers[centers.length - 1], axis);
    }

    Vector3D pinionAxis() {
        return axes[axes.length - 1];
    }

    Vector3D pinionCenter() {
        return centers[centers.length - 1];
    }

    Vector3D axis(int element) {
        return axes[element];
    }

    /**
     * Returns how many joints there are.
     *
     * @return 2 or 3
     */
    public int jointCount() {
        return centers.length;
    }

    /**
     * Returns the distance of two joint centers that follow each other.
     *
     * @param piece the piece between them, 0 for the one at the transfer case
     * @return the length of the piece
     */
    public Length length(int piece) {
        return Length.ofMeters(span(piece));
    }

    double span(int piece) {
        return centers[piece + 1].distance(centers[piece]);
    }

    /**
     * Returns the true operating angle of a joint.
     *
     * @param joint the joint, 0 for the one at the transfer case
     * @return the angle between the two axes that meet there, 0 or more
     */
    public Angle angle(int joint) {
        return Angle.ofRadians(bend(joint));
    }

    /** The angle by atan2 of sine and cosine, which is right for straight joints too. */
    double bend(int joint) {
        Vector3D before = axes[joint];
        Vector3D after = axes[joint + 1];
        return Math.atan2(before.crossProduct(after).getNorm(), before.dotProduct(after));
    }

    /**
     * Returns the slope of an axis as an inclinometer reads it.
     *
     * @param element 0 for the output, then the pieces, last the pinion
     * @return the slope, positive where the axis falls toward the axle
     */
    public Angle slope(int element) {
        return Angle.ofRadians(-Math.asin(Math.max(-1.0, Math.min(1.0, axes[element].getZ()))));
    }

    /**
     * Returns how far the plane of a joint is turned from that of the joint before it.
     *
     * @param piece the piece between the joints, 0 for the one at the transfer case
     * @return the turn about the piece, positive clockwise for one who looks toward the axle, from -180 to 180 degrees. A straight
     *     joint has no plane of its own: it takes that of the joint before it, and the first joint any
     */
    public Angle planeTurn(int piece) {
        return Angle.ofRadians(turn(piece));
    }

    /**
     * Returns the angle between the planes of the two joints of a piece, whichever way each joint bends.
     *
     * @param piece the piece between the joints, 0 for the one at the transfer case
     * @return the angle from the first plane to the second about the piece, positive clockwise for one who looks toward the axle, from -90 to 90 degrees
     */
    public Angle planeAngle(int piece) {
        return Angle.ofRadians(Math.IEEEremainder(turn(piece), Math.PI));
    }

    double turn(int piece) {
        Vector3D axis = axes[piece + 1];
        Vector3D first = normal(piece);
        Vector3D second = normal(piece + 1);
        return Math.atan2(first.crossProduct(second).dotProduct(axis), first.dotProduct(second));
    }

    /** A normal of a joint's plane; where the joint is straight, that of the joint before it carried on along the common axis. */
    private Vector3D normal(int joint) {
        Vector3D axis = axes[joint + 1];
        Vector3D normal = axes[joint].crossProduct(axis);
        if (normal.getNorm() > STRAIGHT) {
            return normal;
        }
        Vector3D carried = joint == 0 ? axis.orthogonal() : normal(joint - 1);
        return carried.subtract(axis.dotProduct(carried), axis);
    }
}
