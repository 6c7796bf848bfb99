package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Torque;
import drivetrain.refusal.Refusal;
import java.util.Optional;

/**
 * A joint of a driveshaft, with what its maker allows.
 *
 * @param kind single or double
 * @param rating the greatest torque that the maker allows, where known
 * @param mostAngle the greatest angle at which the maker lets it turn, up to 90 degrees, where known
 */
public record Joint(JointKind kind, Optional<Torque> rating, Optional<Angle> mostAngle) {

    private static final Angle LARGEST = Angle.ofDegrees(90.0);

    /**
     * Checks the ratings.
     *
     * @throws drivetrain.refusal.RefusedException if the torque is not greater than zero or the angle lies outside 0 to 90 degrees
     */
    public Joint {
        rating = rating.map(torque -> torque.requirePositive("joint rating"));
        mostAngle.ifPresent(Joint::requireAngle);
    }

    private static void requireAngle(Angle angle) {
        angle.requirePositive("greatest joint angle");
        if (angle.isGreaterThan(LARGEST)) {
            throw Refusal.of("greatest joint angle", angle.toString(), "is more than a joint can bend")
                    .allowing("more than 0 deg, at most 90 deg")
                    .asException();
        }
    }

    /**
     * Makes a joint of which nothing more is known.
     *
     * @param kind single or double
     * @return the joint
     */
    public static Joint of(JointKind kind) {
        return new Joint(kind, Optional.empty(), Optional.empty());
    }

    /**
     * Tells whether the joint is a double one.
     *
     * @return true if both sides turn alike
     */
    public boolean isDouble() {
        return kind == JointKind.DOUBLE;
    }
}
