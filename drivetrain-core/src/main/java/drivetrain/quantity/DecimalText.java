package drivetrain.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, the same under every locale: a point for the decimals, no grouping, no minus before zero. */
public final class DecimalText {

    private static final int MOST_DECIMALS = 15;

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
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException("decimals: " + decimals + "; allowed: 0 to " + MOST_DECIMALS);
        }
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
     * Prints the shortest text that reads back as the same number, without an exponent and without a trailing {@code .0}.
     *
     * @param value a finite number
     * @return the text
     * @throws IllegalArgumentException if the number is not finite
     */
    public static String shortest(double value) {
        return plain(exact(value));
    }

    private static BigDecimal exact(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a finite number: " + value);
        }
        return BigDecimal.valueOf(value);
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
