package drivetrain.repl.command.ask;

import drivetrain.quantity.DecimalText;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Offer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The words behind a road speed and a gear that tell about vibrations: {@code with 8 cylinders}, {@code within 8 %}.
 *
 * @param before the words before them
 * @param cylinders the count of cylinders, if it is named
 * @param tolerance the tolerance as a fraction, if it is named
 */
record OrderWords(Arguments before, OptionalInt cylinders, OptionalDouble tolerance) {

    private static final int MOST_CYLINDERS = 16;
    private static final double MOST_PERCENT = 50.0;
    private static final String CYLINDERS = "with 1 to 16 cylinders";
    private static final String TOLERANCE = "within 1 % up to 50 %";

    /** Reads them, in any order, each at most once. */
    static OrderWords read(Arguments arguments, boolean tolerated) {
        int start = start(arguments);
        OptionalInt cylinders = OptionalInt.empty();
        OptionalDouble tolerance = OptionalDouble.empty();
        int at = start;
        while (at < arguments.size()) {
            if (arguments.get(at).isAny("with") && cylinders.isEmpty()) {
                cylinders = OptionalInt.of(cylinders(arguments, at + 1));
                at += 2;
                if (at < arguments.size() && arguments.get(at).isAny("cylinders", "cylinder")) {
                    at++;
                }
            } else if (tolerated && arguments.get(at).isAny("within") && tolerance.isEmpty()) {
                tolerance = OptionalDouble.of(percent(arguments, at + 1));
                at += 2;
                if (at < arguments.size() && arguments.get(at).isAny("%", "percent")) {
                    at++;
                }
            } else {
                throw arguments
                        .refuse(at, "is not understood here")
                        .allowing(tolerated ? CYLINDERS + ", " + TOLERANCE : CYLINDERS)
                        .asException();
            }
        }
        return new OrderWords(arguments.until(start), cylinders, tolerance);
    }

    private static int start(Arguments arguments) {
        for (int i = 0; i < arguments.size(); i++) {
            if (arguments.get(i).isAny("with", "within")) {
                return i;
            }
        }
        return arguments.size();
    }

    private static int cylinders(Arguments arguments, int at) {
        if (at >= arguments.size()) {
            throw arguments
                    .refuse(at, "no count of cylinders is named behind \"with\"")
                    .allowing(CYLINDERS)
                    .asException();
        }
        String word = arguments.get(at).text();
        boolean isCount = word.length() <= 2 && word.chars().allMatch(c -> c >= '0' && c <= '9');
        int count = isCount ? Integer.parseInt(word) : 0;
        if (count < 1 || count > MOST_CYLINDERS) {
            throw arguments
                    .refuse(at, "is not a count of cylinders")
                    .allowing(CYLINDERS)
                    .asException();
        }
        return count;
    }

    private static double percent(Arguments arguments, int at) {
        if (at >= arguments.size()) {
            throw arguments
                    .refuse(at, "no tolerance is named behind \"within\"")
                    .allowing(TOLERANCE)
                    .asException();
        }
        String word = arguments.get(at).text();
        String digits = word.endsWith("%") ? word.substring(0, word.length() - 1) : word;
        boolean sign = word.endsWith("%")
                || (at + 1 < arguments.size() && arguments.get(at + 1).isAny("%", "percent"));
        double percent = DecimalText.parse(digits).orElse(0.0);
        if (!sign || percent <= 0.0 || percent > MOST_PERCENT) {
            throw arguments
                    .refuse(at, sign ? "is not a tolerance" : "has no percent sign")
                    .allowing(TOLERANCE)
                    .asException();
        }
        return percent / 100.0;
    }

    /** What can be offered behind a speed, a gear and these words; empty where only the user knows. */
    static List<Offer> offers(List<String> before, boolean tolerated) {
        String last = before.get(before.size() - 1).toLowerCase(Locale.ROOT);
        if (last.equals("with") || last.equals("within")) {
            return List.of();
        }
        int with = before.indexOf("with");
        if (with >= 0 && with == before.size() - 2) {
            return Offer.of("cylinders");
        }
        int within = before.indexOf("within");
        if (within >= 0 && within == before.size() - 2 && !last.endsWith("%")) {
            return Offer.of("%");
        }
        List<String> words = new ArrayList<>();
        if (with < 0) {
            words.add("with");
        }
        if (tolerated && within < 0) {
            words.add("within");
        }
        return Offer.of(words.toArray(String[]::new));
    }
}
