package drivetrain.gearing;

import drivetrain.quantity.Torque;
import java.util.Optional;

/**
 * The torques that the parts of one axle may carry, from its maker or the makers of its parts.
 *
 * @param ringAndPinion the greatest torque at the ring gear, that is in both half-shafts together, where known
 * @param halfShaft the greatest torque in one half-shaft, where known
 * @param joint the greatest torque in the joint of one half-shaft, such as a constant-velocity or universal joint at a steered wheel, where known
 */
public record AxleRatings(Optional<Torque> ringAndPinion, Optional<Torque> halfShaft, Optional<Torque> joint) {

    static final String RING = "ring-rating";
    static final String SHAFT = "shaft-rating";
    static final String JOINT = "joint-rating";

    private static final AxleRatings UNKNOWN = new AxleRatings(Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * Checks the ratings.
     *
     * @throws drivetrain.refusal.RefusedException if one is not greater than zero
     */
    public AxleRatings {
        ringAndPinion = ringAndPinion.map(torque -> torque.requirePositive("ring and pinion rating"));
        halfShaft = halfShaft.map(torque -> torque.requirePositive("half-shaft rating"));
        joint = joint.map(torque -> torque.requirePositive("joint rating"));
    }

    /**
     * Returns the ratings of an axle of which none is known.
     *
     * @return no rating
     */
    public static AxleRatings unknown() {
        return UNKNOWN;
    }

    static AxleRatings take(Literal literal) {
        return new AxleRatings(
                PartName.takeTorque(literal, RING),
                PartName.takeTorque(literal, SHAFT),
                PartName.takeTorque(literal, JOINT));
    }

    String words() {
        return PartName.torqueWords(RING, ringAndPinion)
                + PartName.torqueWords(SHAFT, halfShaft)
                + PartName.torqueWords(JOINT, joint);
    }
}
