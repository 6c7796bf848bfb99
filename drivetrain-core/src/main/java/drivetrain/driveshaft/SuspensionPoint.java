package drivetrain.driveshaft;

import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Points of a suspension, each from the middle of the axle at ride height. */
final class SuspensionPoint {

    private static final double FURTHEST = 3.0;

    private SuspensionPoint() {}

    static Position requireNear(String subject, Position point) {
        if (point.vector().getNorm() > FURTHEST) {
            throw Refusal.of(
                            subject,
                            point.vector().getNorm() + " m",
                            "lies too far from the axle: is the unit the right one?")
                    .allowing("up to 3 m from the middle of the axle")
                    .asException();
        }
        return point;
    }

    /** One of a pair of points whose y is half their distance. */
    static Vector3D side(Position pair, double side) {
        return new Vector3D(
                pair.x().toMeters(), side * pair.y().toMeters() / 2.0, pair.z().toMeters());
    }

    static void requireApart(String subject, Position pair) {
        pair.y()
                .requireBetween(
                        subject + ", distance apart", Length.ofMeters(0.0), Length.ofMeters(3.0), Length.MILLIMETER);
        requireNear(subject, pair);
    }
}
