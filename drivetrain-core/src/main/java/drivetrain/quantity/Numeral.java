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
        int end = decimalEnd(start, text);
        if (end == start) {
            return Optional.empty();
        }
        String decimal = text.substring(start, end);
        return Optional.of(new Numeral(decimal, Form.DECIMAL, Double.parseDouble(decimal), end));
    }

    /** Tells whether the text, and nothing but it, is a decimal number. */
    static boolean isDecimal(CharSequence text) {
        String whole = text.toString();
        return !whole.isEmpty() && decimalEnd(0, whole) == whole.length();
    }

    /** Returns the index behind the longest decimal number that stands at an index; that index if none does. */
    private static int decimalEnd(int start, String text) {
        int whole = isSign(start, text) ? start + 1 : start;
        int point = digitsEnd(whole, text);
        boolean hasPoint = point < text.length() && text.charAt(point) == '.';
        int end = hasPoint ? digitsEnd(point + 1, text) : point;
        if (point == whole && end <= point + 1) {
            return start; // neither a digit before a point nor one behind it
        }
        if (end < text.length() && (text.charAt(end) == 'e' || text.charAt(end) == 'E')) {
            int exponent = isSign(end + 1, text) ? end + 2 : end + 1;
            int behind = digitsEnd(exponent, text);
            return behind > exponent ? behind : end;
        }
        return end;
    }

    private static boolean isSign(int index, String text) {
        return index < text.length() && (text.charAt(index) == '+' || text.charAt(index) == '-');
    }

    private static int digitsEnd(int from, String text) {
        int end = from;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
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
