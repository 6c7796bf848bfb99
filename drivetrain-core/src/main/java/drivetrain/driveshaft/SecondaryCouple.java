package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Torque;

/**
 * The bending couples that a joint at an angle puts on its two shafts while it carries a torque. Each swings between zero and its greatest value twice a turn: half of
 * it is steady, half vibrates at the second order.
 *
 * @param onDriving the greatest couple on the driving shaft, T tan b
 * @param onDriven the greatest couple on the driven shaft, T sin b
 */
public record SecondaryCouple(Torque onDriving, Torque onDriven) {

    /**
     * Finds the couples.
     *
     * @param torque the torque in the driving shaft
     * @param angle the operating angle, 0 to less than 90 degrees
     * @return the couples
     * @throws drivetrain.refusal.RefusedException if the torque is not greater than zero
     */
    public static SecondaryCouple of(Torque torque, Angle angle) {
        torque.requirePositive("shaft torque");
        return new SecondaryCouple(
                torque.times(Math.tan(angle.toRadians())), torque.times(Math.sin(angle.toRadians())));
    }
}
