package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.refusal.Refusal;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The direction of an axis as a shop measures it, walking along the shaft from the transfer case to the axle.
 *
 * @param down the slope that an inclinometer reads: positive where the axis falls toward the axle; within 60 degrees
 * @param left the turn in plan view: positive where the axis runs to the vehicle's left; within 60 degrees; empty where it was not measured and is
 *     taken as parallel to the centerline
 */
public record AxisDirection(Angle down, Optional<Angle> left) {

    private static final double STEEPEST = Math.toRadians(60.0);

    /**
     * Checks the angles.
     *
     * @throws drivetrain.refusal.RefusedException if an angle is more than 60 degrees
     */
    public AxisDirection {
        require("slope", down);
        left.ifPresent(turn -> require("turn in plan view", turn));
    }

    private static void require(String subject, Angle angle) {
        if (Math.abs(angle.toRadians()) > STEEPEST) {
            throw Refusal.of(
                            subject,
                            angle.toDegrees() + " deg",
                            "is too much for a driveline: is the unit the right one?")
                    .allowing("up to 60 deg either way")
                    .asException();
        }
    }

    /**
     * Makes a direction parallel to the centerline in plan view.
     *
     * @param down the slope, positive where the axis falls toward the axle
     * @return the direction
     * @throws drivetrain.refusal.RefusedException if the slope is too steep
     */
    public static AxisDirection sloping(Angle down) {
        return new AxisDirection(down, Optional.empty());
    }

    /**
     * Changes the slope.
     *
     * @param slope the new slope
     * @return a copy with it
     * @throws drivetrain.refusal.RefusedException if the slope is too steep
     */
    public AxisDirection withDown(Angle slope) {
        return new AxisDirection(slope, left);
    }

    /** The unit vector along the axis toward the axle: its z component is minus the sine of the slope, which is what an inclinometer reads. */
    Vector3D vector(ShaftPlace place) {
        double turn = left.map(Angle::toRadians).orElse(0.0);
        return vector(down.toRadians(), turn, place);
    }

    static Vector3D vector(double down, double left, ShaftPlace place) {
        double level = Math.cos(down);
        return new Vector3D(place.forward() * level * Math.cos(left), level * Math.sin(left), -Math.sin(down));
    }
}
