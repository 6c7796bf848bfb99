package drivetrain.driveshaft;

import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Quantity;
import drivetrain.quantity.Unit;

/** Writes a quantity with as few digits as read back as exactly the same one. */
final class ExactText {

    private static final int FEWEST = 3;
    private static final int MOST = 15;

    private ExactText() {}

    /** Writes a quantity in a unit, or in the SI unit where no number in that unit reads back exactly. */
    static <Q extends Quantity<Q>> String of(Q quantity, Unit<Q> unit) {
        double number = quantity.in(unit);
        for (int digits = FEWEST; digits <= MOST; digits++) {
            String text = DecimalText.significant(number, digits) + " " + unit.symbol();
            if (quantity.kind().parse(text).equals(quantity)) {
                return text;
            }
        }
        String shortest = DecimalText.shortest(number) + " " + unit.symbol();
        return quantity.kind().parse(shortest).equals(quantity)
                ? shortest
                : DecimalText.shortest(quantity.si()) + " "
                        + quantity.kind().siUnit().symbol();
    }
}
