package drivetrain.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words the range that a refusal allows in the unit in which the refused quantity was typed. Limits are rounded inward to four digits, so that what is named is itself allowed.
 */
public final class AllowedRange {

    private static final int DIGITS = 4;
    private static final int EXACT_DIGITS = 12;
    private static final int MOST_UNIT_WORDS = 3;
    private static final String NUMBER = "(-?[0-9]+(?:\\.[0-9]*)?(?:[eE]-?[0-9]+)?)";
    private static final Pattern BETWEEN = Pattern.compile(NUMBER + "(?: (\\D[^;,]*?))? to " + NUMBER + " (\\D[^;,]*)");
    private static final Pattern AT_MOST = Pattern.compile("(at most |up to )" + NUMBER + " (\\D[^;,]*)");
    private static final Pattern ABOVE_ZERO = Pattern.compile("more than 0 (\\D[^;,]*)");
    private static final Pattern TYPED = Pattern.compile(
            "(?<![\\p{Alnum}.])(-?(?:[0-9]+[ -])?[0-9]+/[0-9]+|[+-]?[0-9]+(?:\\.[0-9]*)?(?:[eE]-?[0-9]+)?)\\s*([^\\s,;0-9][^\\s,;]*(?: [^\\s,;]+){0,2})");

    private AllowedRange() {}

    /**
     * Words a range.
     *
     * @param least the least that is allowed
     * @param most the most that is allowed
     * @param unit the unit in which it was typed
     * @param <Q> the kind
     * @return such as {@code 0.265 to 264.1 US gal}
     */
    public static <Q extends Quantity<Q>> String between(Q least, Q most, Unit<Q> unit) {
        return inward(least.in(unit), RoundingMode.CEILING) + " to " + inward(most.in(unit), RoundingMode.FLOOR) + " "
                + unit.symbol();
    }

    /**
     * Words a greatest value.
     *
     * @param most the most that is allowed
     * @param unit the unit in which it was typed
     * @param <Q> the kind
     * @return such as {@code at most 196.8 in}
     */
    public static <Q extends Quantity<Q>> String atMost(Q most, Unit<Q> unit) {
        return "at most " + inward(most.in(unit), RoundingMode.FLOOR) + " " + unit.symbol();
    }

    private static String inward(double value, RoundingMode mode) {
        BigDecimal exact = new BigDecimal(value).round(new MathContext(EXACT_DIGITS));
        BigDecimal rounded = exact.round(new MathContext(DIGITS, mode));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /**
     * Finds the unit of the first quantity of a kind in a text.
     *
     * @param kind the kind
     * @param typed the text
     * @param <Q> the kind
     * @return the unit, or empty if no quantity of the kind stands there
     */
    public static <Q extends Quantity<Q>> Optional<Unit<Q>> unitOf(Kind<Q> kind, String typed) {
        Matcher quantities = TYPED.matcher(typed);
        while (quantities.find()) {
            Optional<Unit<Q>> unit = longest(kind, quantities.group(2));
            if (unit.isPresent()) {
                return unit;
            }
        }
        return Optional.empty();
    }

    private static <Q extends Quantity<Q>> Optional<Unit<Q>> longest(Kind<Q> kind, String words) {
        String unit = words;
        for (int i = 0; i < MOST_UNIT_WORDS; i++) {
            Optional<Unit<Q>> known = kind.unit(unit);
            int blank = unit.lastIndexOf(' ');
            if (known.isPresent() || blank < 0) {
                return known;
            }
            unit = unit.substring(0, blank);
        }
        return Optional.empty();
    }

    /**
     * Words a range anew in the unit in which the refused quantity was typed.
     *
     * @param allowed the range as the refusal words it, such as {@code 50 to 5000 mm}
     * @param typed what was typed, from the place of the refusal on
     * @return the range in the unit of the first quantity of its kind there, such as {@code 1.969 to 196.8 in}; empty where it is no range or none was typed
     */
    public static Optional<String> inUnitOf(String allowed, String typed) {
        Matcher between = BETWEEN.matcher(allowed);
        if (between.matches()) {
            String unit = between.group(4);
            String first = between.group(2) == null ? unit : between.group(2);
            return first.equals(unit)
                    ? Kinds.measuredIn(unit)
                            .flatMap(kind -> between(kind, typed, unit, between.group(1), between.group(3)))
                    : Optional.empty();
        }
        Matcher most = AT_MOST.matcher(allowed);
        if (most.matches()) {
            return Kinds.measuredIn(most.group(3))
                    .flatMap(kind ->
                            end(kind, typed, most.group(3), most.group(2)).map(end -> most.group(1) + end));
        }
        Matcher zero = ABOVE_ZERO.matcher(allowed);
        return zero.matches()
                ? Kinds.measuredIn(zero.group(1))
                        .flatMap(kind -> unitOf(kind, typed).map(unit -> "more than 0 " + unit.symbol()))
                : Optional.empty();
    }

    private static <Q extends Quantity<Q>> Optional<String> between(
            Kind<Q> kind, String typed, String unit, String least, String most) {
        Optional<Unit<Q>> known = kind.unit(unit);
        return known.flatMap(from -> unitOf(kind, typed)
                .map(to -> between(
                        kind.of(Double.parseDouble(least), from), kind.of(Double.parseDouble(most), from), to)));
    }

    private static <Q extends Quantity<Q>> Optional<String> end(Kind<Q> kind, String typed, String unit, String most) {
        Optional<Unit<Q>> known = kind.unit(unit);
        return known.flatMap(from -> unitOf(kind, typed)
                .map(to -> inward(kind.of(Double.parseDouble(most), from).in(to), RoundingMode.FLOOR) + " "
                        + to.symbol()));
    }
}
