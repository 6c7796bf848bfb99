package drivetrain.engine;

import drivetrain.quantity.AngularSpeed;
import drivetrain.refusal.Refusal;

/**
 * The engine speeds over which torque is known.
 *
 * @param lowest the lowest of them
 * @param highest the highest of them, above the lowest
 */
public record SpeedBand(AngularSpeed lowest, AngularSpeed highest) {

    /**
     * Checks the order.
     *
     * @throws drivetrain.refusal.RefusedException if the highest is not above the lowest
     */
    public SpeedBand {
        if (!highest.isGreaterThan(lowest)) {
            throw Refusal.of("speed band", ShownText.rpm(lowest) + " to " + ShownText.rpm(highest), "is empty")
                    .allowing("a highest speed above the lowest")
                    .asException();
        }
    }

    /**
     * Tells whether a speed lies in the band.
     *
     * @param speed the speed
     * @return true if it does, the ends included
     */
    public boolean contains(AngularSpeed speed) {
        return !speed.isLessThan(lowest) && !speed.isGreaterThan(highest);
    }
}
