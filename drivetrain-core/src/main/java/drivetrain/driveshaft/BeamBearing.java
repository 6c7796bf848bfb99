package drivetrain.driveshaft;

import drivetrain.quantity.Stiffness;
import java.util.Optional;

/**
 * A bearing along a beam, which holds it across and lets it tilt.
 *
 * @param stiffness the stiffness of its mount; empty if it holds firm
 */
public record BeamBearing(Optional<Stiffness> stiffness) implements BeamPiece {

    /**
     * Checks the stiffness.
     *
     * @throws drivetrain.refusal.RefusedException if it is not greater than zero
     */
    public BeamBearing {
        stiffness = stiffness.map(mount -> mount.requirePositive("stiffness of the bearing's mount"));
    }

    /**
     * Makes a bearing in a soft mount.
     *
     * @param stiffness the stiffness of the mount across the shaft
     * @return the bearing
     * @throws drivetrain.refusal.RefusedException if it is not greater than zero
     */
    public static BeamBearing of(Stiffness stiffness) {
        return new BeamBearing(Optional.of(stiffness));
    }

    /**
     * Makes a bearing that holds firm.
     *
     * @return the bearing
     */
    public static BeamBearing firm() {
        return new BeamBearing(Optional.empty());
    }
}
