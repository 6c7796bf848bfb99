package drivetrain.gearing;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one ratio within a literal. */
final class RatioText {

    static final String ALLOWED = "a decimal such as 4.10, or driven/driving teeth such as 41/10";

    private static final Pattern DECIMAL = Pattern.compile("([0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[:/]1)?");
    private static final Pattern PAIR = Pattern.compile("([0-9]+)[/:]([0-9]+)");
    private static final int MOST_DIGITS = 4;

    private RatioText() {}

    static Ratio take(Literal literal, RatioLimits limits) {
        Literal.Word word = literal.take("a ratio");
        Matcher decimal = DECIMAL.matcher(word.text());
        if (decimal.matches()) {
            double value = Double.parseDouble(decimal.group(1));
            if (!limits.allow(value)) {
                throw literal.outOfRange(word, limits.subject(), limits.text());
            }
            return Ratio.of(value);
        }
        Matcher pair = PAIR.matcher(word.text());
        if (!pair.matches()) {
            throw literal.refusal("\"" + word.text() + "\" is not a ratio", word.start() + fault(word.text()));
        }
        int driven = teeth(literal, word, pair.group(1), 0);
        int driving = teeth(literal, word, pair.group(2), pair.start(2));
        if (!limits.allow((double) driven / driving)) {
            throw literal.outOfRange(word, limits.subject(), limits.text());
        }
        return Ratio.ofTeeth(driven, driving);
    }

    private static int teeth(Literal literal, Literal.Word word, String digits, int offset) {
        int count = digits.length() > MOST_DIGITS ? Integer.MAX_VALUE : Integer.parseInt(digits);
        if (count < Ratio.FEWEST_TEETH || count > Ratio.MOST_TEETH) {
            throw literal.outOfRange(
                    new Literal.Word(digits, word.start() + offset),
                    "tooth count",
                    Ratio.FEWEST_TEETH + " to " + Ratio.MOST_TEETH + " teeth");
        }
        return count;
    }

    /** The first character that no ratio has at its place. */
    private static int fault(String text) {
        Matcher longest = Pattern.compile("[0-9]*\\.?[0-9]*(?:[/:][0-9]*)?").matcher(text);
        return longest.lookingAt() && longest.end() < text.length() ? longest.end() : 0;
    }
}
