package drivetrain.driveshaft;

import drivetrain.quantity.Length;

/**
 * A flange by position and axis.
 *
 * @param point the joint center, or the middle of the flange's face
 * @param axis the direction of its axis
 * @param toJoint from that point along the axis to the joint center, away from the housing; 0 if the point is the joint center, up to 500 mm
 */
public record Flange(Position point, AxisDirection axis, Length toJoint) {

    /**
     * Checks the offset.
     *
     * @throws drivetrain.refusal.RefusedException if the offset is negative or more than 500 mm
     */
    public Flange {
        toJoint = toJoint.requireBetween(
                "flange to joint", Length.ofMeters(0.0), Length.ofMillimeters(500.0), Length.MILLIMETER);
    }
}
