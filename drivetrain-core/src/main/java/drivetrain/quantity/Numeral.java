package drivetrain.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The number at the start of a quantity's text: decimal, or a fraction as a tape measure shows it ({@code 88 7/16},
 * {@code 88-7/16}, {@code 7/16}), which has the exact value of the decimal number that it stands for.
 *
 * @param text the number as typed
 * @param form how it is written
 * @param value its value; infinite if it is too large for a {@code double}, zero if it is too small
 * @param end the index behind it
 */
record Numeral(String text, Form form, double value, int end) {

    private static final Pattern DECIMAL =
            Pattern.compile("[+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");
    private static final Pattern FRACTION =
            Pattern.compile("([+-]?)(?:([0-9]{1,9})(?: +|-))?([0-9]{1,9})/([0-9]{1,9})(?![0-9])");

    /** How a number is written. */
    enum Form {
        /** With a decimal point or none. */
        DECIMAL,
        /** As a fraction of halves, quarters and so on to sixty-fourths, less than one. */
        TAPE_FRACTION,
        /** As any other fraction. */
        OTHER_FRACTION
    }

    /** Reads the number that stands at an index; empty if none does. */
    static Optional<Numeral> at(int start, String text) {
        if (text.indexOf('/', start) > 0) {
            Matcher fraction = FRACTION.matcher(text).region(start, text.length());
            if (fraction.lookingAt()) {
                return Optional.of(ofFraction(fraction));
            }
        }
        Matcher decimal = DECIMAL.matcher(text).region(start, text.length());
        if (decimal.lookingAt()) {
            double value = Double.parseDouble(decimal.group());
            return Optional.of(new Numeral(decimal.group(), Form.DECIMAL, value, decimal.end()));
        }
        return Optional.empty();
    }

    /** Tells whether the text, and nothing but it, is a decimal number. */
    static boolean isDecimal(CharSequence text) {
        return DECIMAL.matcher(text).matches();
    }

    /** Tells whether the number as typed is zero, whatever its exponent. */
    boolean isZeroAsTyped() {
        return text.chars().takeWhile(c -> c != 'e' && c != 'E').noneMatch(c -> c >= '1' && c <= '9');
    }

    private static Numeral ofFraction(Matcher fraction) {
        long whole = fraction.group(2) == null ? 0 : Long.parseLong(fraction.group(2));
        long numerator = Long.parseLong(fraction.group(3));
        long denominator = Long.parseLong(fraction.group(4));
        boolean isOnTape = denominator >= 2 && denominator <= 64 && Long.bitCount(denominator) == 1;
        Form form = isOnTape && numerator < denominator ? Form.TAPE_FRACTION : Form.OTHER_FRACTION;
        double size = (double) (whole * denominator + numerator) / denominator;
        double value = fraction.group(1).equals("-") ? -size : size;
        return new Numeral(fraction.group(), form, value, fraction.end());
    }
}
