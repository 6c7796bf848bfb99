package drivetrain.engine;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Power;
import drivetrain.quantity.Torque;

/**
 * An engine speed and the torque there at full load; the power follows from them.
 *
 * @param speed the engine speed, 1 to 30 000 rpm
 * @param torque the torque, 0.1 to 100 000 N·m
 */
public record OperatingPoint(AngularSpeed speed, Torque torque) {

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public OperatingPoint {
        Plausible.speed("engine speed", speed);
        Plausible.torque("engine torque", torque);
    }

    /**
     * Makes a point.
     *
     * @param speed the engine speed
     * @param torque the torque
     * @return the point
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public static OperatingPoint of(AngularSpeed speed, Torque torque) {
        return new OperatingPoint(speed, torque);
    }

    /**
     * Makes a point from its power.
     *
     * @param speed the engine speed
     * @param power the power
     * @return the point whose torque is the power divided by the speed
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public static OperatingPoint of(AngularSpeed speed, Power power) {
        return new OperatingPoint(Plausible.speed("engine speed", speed), power.torqueAt(speed));
    }

    /**
     * Returns the power.
     *
     * @return torque times angular speed
     */
    public Power power() {
        return torque.at(speed);
    }
}
