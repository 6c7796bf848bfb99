package drivetrain.comparison;

import drivetrain.refusal.Refusal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Ranges of numbers in the text of a literal: {@code 3.07..5.38 step 0.01}. */
final class NumberRange {

    private static final Pattern RANGE = Pattern.compile(
            "(?<first>[0-9]+(?:\\.[0-9]+)?)\\.\\.(?<last>[0-9]+(?:\\.[0-9]+)?)(?<by>\\s+step\\s+(?<step>[0-9]+(?:\\.[0-9]+)?))?");

    private NumberRange() {}

    /**
     * Spreads a literal out.
     *
     * @param literal the literal
     * @param at its index in the text
     * @param text the text that a refusal quotes
     * @return every literal with the numbers of its ranges put in, the first range changing last; empty if it has no range
     */
    static List<String> spread(String literal, int at, String text, String subject) {
        Matcher ranges = RANGE.matcher(literal);
        if (!ranges.find()) {
            return List.of();
        }
        String head = literal.substring(0, ranges.start());
        String tail = literal.substring(ranges.end());
        List<String> numbers = numbers(ranges, at, text, subject);
        List<String> tails = spread(tail, at + ranges.end(), text, subject);
        List<String> rest = tails.isEmpty() ? List.of(tail) : tails;
        if ((long) numbers.size() * rest.size() > PartList.MOST) {
            throw tooMany(at, text, subject);
        }
        List<String> spread = new ArrayList<>(numbers.size() * rest.size());
        for (String number : numbers) {
            for (String one : rest) {
                spread.add(head + number + one);
            }
        }
        return spread;
    }

    private static List<String> numbers(Matcher range, int at, String text, String subject) {
        String given = text.strip();
        if (range.group("step") == null) {
            throw Refusal.of(subject, given, "a range has no step")
                    .allowing(range.group() + " step and a number, such as " + range.group() + " step 0.01")
                    .at(at + range.end())
                    .asException();
        }
        BigDecimal first = new BigDecimal(range.group("first"));
        BigDecimal last = new BigDecimal(range.group("last"));
        BigDecimal step = new BigDecimal(range.group("step"));
        if (step.signum() == 0 || first.compareTo(last) > 0) {
            throw Refusal.of(subject, given, step.signum() == 0 ? "a step of zero" : "a range that runs down")
                    .allowing("a first number not above the last, and a step above zero")
                    .at(at + range.start())
                    .asException();
        }
        if (last.subtract(first).divideToIntegralValue(step).compareTo(BigDecimal.valueOf(PartList.MOST)) >= 0) {
            throw tooMany(at + range.start(), text, subject);
        }
        List<String> numbers = new ArrayList<>();
        for (BigDecimal number = first; number.compareTo(last) <= 0; number = number.add(step)) {
            numbers.add(number.toPlainString());
        }
        return numbers;
    }

    private static drivetrain.refusal.RefusedException tooMany(int at, String text, String subject) {
        return Refusal.of(subject, text.strip(), "the list is too long")
                .allowing("at most " + PartList.MOST + " parts in a list")
                .at(at)
                .asException();
    }
}
