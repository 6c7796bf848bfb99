package drivetrain.driveshaft;

import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Quantity;
import drivetrain.quantity.Unit;

/** Writes a quantity with as few digits as read back as exactly the same one. */
final class ExactText {

    private static final int FEWEST = 3;
    private static final int MOST = 15;
    /** Longer figures, which are those next to nothing, are written with an exponent. */
    private static final int LONGEST = 40;

    private ExactText() {}

    /** Writes a quantity in a unit, or in the SI unit where no number in that unit reads back exactly. */
    static <Q extends Quantity<Q>> String of(Q quantity, Unit<Q> unit) {
        double number = quantity.in(unit);
        for (int digits = FEWEST; digits <= MOST; digits++) {
            String text = DecimalText.significant(number, digits) + " " + unit.symbol();
            if (readsBack(text, quantity)) {
                return text;
            }
        }
        String shortest = DecimalText.shortest(number) + " " + unit.symbol();
        return readsBack(shortest, quantity) ? shortest : quantity.toString();
    }

    private static <Q extends Quantity<Q>> boolean readsBack(String text, Q quantity) {
        return text.length() <= LONGEST && quantity.kind().parse(text).equals(quantity);
    }
}
