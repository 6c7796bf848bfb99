package drivetrain.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/** Numbers as text, the same under every locale: a point for the decimals, no grouping, no minus before zero. */
public final class DecimalText {

    private static final int MOST_DECIMALS = 15;
    private static final int MOST_DIGITS_IN_REFUSAL = 12;

    /** Any decimal number of so many digits is told from its neighbors by a normal {@code double}. */
    private static final int ALWAYS_KEPT = 15;

    private DecimalText() {}

    /**
     * Prints with a fixed count of decimals, half away from zero.
     *
     * @param value a finite number
     * @param decimals the count of decimals, 0 to 15
     * @return the text
     * @throws IllegalArgumentException if the number is not finite or the count is out of range
     */
    public static String fixed(double value, int decimals) {
        requireDecimals(decimals);
        BigDecimal rounded = exact(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.toPlainString();
    }

    /**
     * Prints with a count of significant digits, half away from zero, without an exponent.
     *
     * @param value a finite number
     * @param digits the count of digits, at least 1
     * @return the text, without trailing zeros after the point
     * @throws IllegalArgumentException if the number is not finite or the count is out of range
     */
    public static String significant(double value, int digits) {
        if (digits < 1 || digits > MOST_DECIMALS) {
            throw new IllegalArgumentException("digits: " + digits + "; allowed: 1 to " + MOST_DECIMALS);
        }
        return plain(exact(value).round(new MathContext(digits, RoundingMode.HALF_UP)));
    }

    /**
     * Prints the number rounded to the fewest significant digits that read back as the same number, without an exponent and without a
     * trailing {@code .0}; the same under every version of Java.
     *
     * @param value a finite number
     * @return the text
     * @throws IllegalArgumentException if the number is not finite
     */
    public static String shortest(double value) {
        requireFinite(value);
        BigDecimal all = new BigDecimal(value);
        int digits = Math.abs(value) < Double.MIN_NORMAL ? 1 : ALWAYS_KEPT;
        BigDecimal rounded = all.round(new MathContext(digits));
        while (rounded.doubleValue() != value) {
            digits++;
            rounded = all.round(new MathContext(digits));
        }
        return plain(rounded);
    }

    /**
     * Reads a decimal number: an optional sign, digits with at most one point, an optional exponent.
     *
     * @param text the text, without blanks around it
     * @return the number, which is finite; empty if the text is anything else
     */
    public static OptionalDouble parse(CharSequence text) {
        if (!Numeral.isDecimal(text)) {
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(text.toString());
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** Prints a number of any size, even one that is not finite, in few characters for a refusal. */
    static String brief(double value) {
        double size = Math.abs(value);
        boolean isPlain = value == 0.0 || (size >= 1e-6 && size < 1e9);
        return isPlain ? significant(value, MOST_DIGITS_IN_REFUSAL) : Double.toString(value);
    }

    static void requireDecimals(int decimals) {
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException("decimals: " + decimals + "; allowed: 0 to " + MOST_DECIMALS);
        }
    }

    private static BigDecimal exact(double value) {
        requireFinite(value);
        return BigDecimal.valueOf(value);
    }

    private static void requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a finite number: " + value);
        }
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
