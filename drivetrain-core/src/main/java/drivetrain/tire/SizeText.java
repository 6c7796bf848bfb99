package drivetrain.tire;

import drivetrain.quantity.DecimalText;

/** The numbers of a size as they are marked. */
final class SizeText {

    private SizeText() {}

    /** A rim diameter or nominal diameter: as many decimals as it has. */
    static String number(double value) {
        return DecimalText.shortest(value);
    }

    /** A width in inches, always with two decimals. */
    static String hundredths(double value) {
        return DecimalText.fixed(value, 2);
    }
}
