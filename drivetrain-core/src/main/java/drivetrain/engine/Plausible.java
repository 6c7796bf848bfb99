package drivetrain.engine;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Power;
import drivetrain.quantity.Torque;
import drivetrain.quantity.Volume;

/**
 * Guards against a slip of the unit or of the decimal point: no engine of a road vehicle is near these limits (common practice, no source).
 */
final class Plausible {

    private static final AngularSpeed LEAST_SPEED = AngularSpeed.ofRpm(1.0);
    private static final AngularSpeed MOST_SPEED = AngularSpeed.ofRpm(30_000.0);
    private static final Torque LEAST_TORQUE = Torque.ofNewtonMeters(0.1);
    private static final Torque MOST_TORQUE = Torque.ofNewtonMeters(100_000.0);
    private static final Power LEAST_POWER = Power.ofKilowatts(0.01);
    private static final Power MOST_POWER = Power.ofKilowatts(20_000.0);
    private static final Volume LEAST_DISPLACEMENT = Volume.ofLiters(0.01);
    private static final Volume MOST_DISPLACEMENT = Volume.ofLiters(200.0);

    private Plausible() {}

    static AngularSpeed speed(String subject, AngularSpeed speed) {
        return speed.requireBetween(subject, LEAST_SPEED, MOST_SPEED, AngularSpeed.RPM);
    }

    static Torque torque(String subject, Torque torque) {
        return torque.requireBetween(subject, LEAST_TORQUE, MOST_TORQUE, Torque.NEWTON_METER);
    }

    static Power power(String subject, Power power) {
        return power.requireBetween(subject, LEAST_POWER, MOST_POWER, Power.KILOWATT);
    }

    static Volume displacement(Volume volume) {
        return volume.requireBetween("displacement", LEAST_DISPLACEMENT, MOST_DISPLACEMENT, Volume.LITER);
    }
}
