package drivetrain.engine;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Power;
import drivetrain.quantity.Quantity;
import drivetrain.quantity.Torque;
import drivetrain.quantity.Unit;
import java.util.List;

/** Quantities as text: short for sentences, and exact for text that is read back. */
final class ShownText {

    private static final int MOST_DIGITS = 9;

    private ShownText() {}

    static String rpm(AngularSpeed speed) {
        return DecimalText.significant(speed.toRpm(), 5) + " rpm";
    }

    static String torque(Torque torque) {
        return DecimalText.significant(torque.toPoundFeet(), 4) + " lb-ft ("
                + DecimalText.significant(torque.toNewtonMeters(), 4) + " Nm)";
    }

    static String power(Power power) {
        return DecimalText.significant(power.toHorsepower(), 4) + " hp ("
                + DecimalText.significant(power.toKilowatts(), 4) + " kW)";
    }

    /** Returns the shortest text in one of the units that reads back as the very same quantity; else the SI number in full. */
    static <Q extends Quantity<Q>> String exact(Q quantity, List<Unit<Q>> units) {
        String best = DecimalText.shortest(quantity.si());
        Unit<Q> bestUnit = quantity.kind().siUnit();
        for (Unit<Q> unit : units) {
            String number = exactNumber(quantity, unit);
            if (!number.isEmpty() && number.length() < best.length()) {
                best = number;
                bestUnit = unit;
            }
        }
        return best + " " + bestUnit.asciiSymbol();
    }

    private static <Q extends Quantity<Q>> String exactNumber(Q quantity, Unit<Q> unit) {
        double number = quantity.in(unit);
        for (int digits = 1; digits <= MOST_DIGITS; digits++) {
            String text = DecimalText.significant(number, digits);
            if (quantity.kind().of(Double.parseDouble(text), unit).equals(quantity)) {
                return text;
            }
        }
        return "";
    }
}
