package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import java.util.List;

/**
 * A shaft at one place of its axle's travel.
 *
 * @param left how far the left wheel is raised from ride height
 * @param right how far the right wheel is raised
 * @param length the length of the piece with the sliding spline, from joint to joint
 * @param angles the operating angle of each joint, the one at the transfer case first
 * @param residual the equivalent residual angle of the line
 */
public record TravelPoint(Length left, Length right, Length length, List<Angle> angles, Angle residual) {

    /** Copies the list. */
    public TravelPoint {
        angles = List.copyOf(angles);
    }
}
