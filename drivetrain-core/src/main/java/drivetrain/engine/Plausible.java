package drivetrain.engine;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Power;
import drivetrain.quantity.Quantity;
import drivetrain.quantity.Torque;
import drivetrain.quantity.Unit;
import drivetrain.quantity.Volume;
import drivetrain.refusal.Refusal;

/**
 * Guards against a slip of the unit or of the decimal point: no engine of a road vehicle is near these limits (common practice, no source).
 */
final class Plausible {

    private Plausible() {}

    static AngularSpeed speed(String subject, AngularSpeed speed) {
        return between(subject, speed, 1.0, 30_000.0, AngularSpeed.RPM);
    }

    static Torque torque(String subject, Torque torque) {
        return between(subject, torque, 0.1, 100_000.0, Torque.NEWTON_METER);
    }

    static Power power(String subject, Power power) {
        return between(subject, power, 0.01, 20_000.0, Power.KILOWATT);
    }

    static Volume displacement(Volume volume) {
        return between("displacement", volume, 0.01, 200.0, Volume.LITER);
    }

    private static <Q extends Quantity<Q>> Q between(
            String subject, Q quantity, double least, double most, Unit<Q> unit) {
        // compared in SI, so that a limit as typed is itself allowed
        if (quantity.si() >= quantity.kind().of(least, unit).si()
                && quantity.si() <= quantity.kind().of(most, unit).si()) {
            return quantity;
        }
        String given = DecimalText.significant(quantity.in(unit), 5) + " " + unit.asciiSymbol();
        throw Refusal.of(subject, given, "is out of range")
                .allowing(DecimalText.shortest(least) + " to " + DecimalText.shortest(most) + " " + unit.asciiSymbol())
                .asException();
    }
}
