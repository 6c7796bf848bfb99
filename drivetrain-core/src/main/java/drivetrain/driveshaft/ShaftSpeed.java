package drivetrain.driveshaft;

import drivetrain.quantity.AngularSpeed;

/**
 * A speed that a driveshaft reaches.
 *
 * @param where where it comes from, such as {@code maximum engine speed in 5th high}
 * @param speed the speed of the shaft, zero or more
 * @param held true if it is driven for long, as at cruise; false if it is passed through or reached for a moment
 */
public record ShaftSpeed(String where, AngularSpeed speed, boolean held) {

    /**
     * Checks the speed.
     *
     * @throws drivetrain.refusal.RefusedException if it is negative or more than 100000 rpm
     */
    public ShaftSpeed {
        speed = speed.requireBetween(
                "driveshaft speed", AngularSpeed.ofRpm(0.0), AngularSpeed.ofRpm(100_000.0), AngularSpeed.RPM);
    }

    /**
     * Makes a speed that is reached for a moment.
     *
     * @param where where it comes from
     * @param speed the speed of the shaft
     * @return the speed
     */
    public static ShaftSpeed reached(String where, AngularSpeed speed) {
        return new ShaftSpeed(where, speed, false);
    }

    /**
     * Makes a speed that is driven for long.
     *
     * @param where where it comes from
     * @param speed the speed of the shaft
     * @return the speed
     */
    public static ShaftSpeed held(String where, AngularSpeed speed) {
        return new ShaftSpeed(where, speed, true);
    }
}
