package drivetrain.repl.command.compare;

import drivetrain.comparison.Aim;
import drivetrain.comparison.Measure;
import drivetrain.comparison.MeasureWords;
import drivetrain.comparison.Wish;
import drivetrain.planner.Objective;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Wishes and aims in a sentence: {@code crawl ratio at least 60}, {@code lowest rpm at 65 mph}, {@code rpm near 2000 rpm weight 2}. */
final class FigureWords {

    private static final Pattern NUMBER = Pattern.compile("[0-9]*\\.?[0-9]+");
    private static final String COMPARISONS = "at least, at most or between, with a number behind it";

    private FigureWords() {}

    /** Reads a measure; an engine speed without a road speed is that at the cruise speed of the order. */
    static Measure measure(Session session, Arguments words) {
        return words.read(text -> MeasureWords.parse(text, session.combination().cruise()));
    }

    /** Reads the wishes behind {@code where}. */
    static List<Wish> wishes(Session session, Arguments words) {
        List<Wish> wishes = new ArrayList<>();
        int at = 0;
        while (at < words.size() || wishes.isEmpty()) {
            int comparison = comparison(words, at);
            if (comparison == words.size()) {
                throw words.refuse(Math.min(at, words.size()), "is held against no number")
                        .allowing("a figure, then " + COMPARISONS)
                        .asException();
            }
            Measure measure = measure(session, words.until(comparison).from(at));
            boolean isBetween = words.get(comparison).isAny("between");
            int number = comparison + (words.get(comparison).isAny("at") ? 2 : 1);
            int end = Clauses.indexOf(words, number, "and");
            if (isBetween) {
                int second = end + 1;
                end = Clauses.indexOf(words, second, "and");
                wishes.add(between(words, measure, number, second, end));
            } else {
                double limit = number(words, measure, number, end);
                wishes.add(isLow(words, comparison) ? Wish.atLeast(measure, limit) : Wish.atMost(measure, limit));
            }
            at = end + 1;
        }
        return wishes;
    }

    private static Wish between(Arguments words, Measure measure, int number, int second, int end) {
        if (second >= words.size()) {
            throw words.refuse(words.size(), "a second number is missing")
                    .allowing("between, a number, and, a number")
                    .asException();
        }
        double high = number(words, measure, second, end);
        boolean isBare = second - 1 - number == 1
                && NUMBER.matcher(words.get(number).text()).matches();
        boolean lacksUnit = isBare && !measure.scale().units().isEmpty();
        String unit = words.until(end).from(Math.min(second + 1, end)).text();
        double low = lacksUnit
                ? words.until(second - 1)
                        .from(number)
                        .read(text -> measure.scale().parse(text + " " + unit))
                : number(words, measure, number, second - 1);
        if (low > high) {
            throw words.refuse(number, "is above the second number")
                    .allowing("the lower number first")
                    .asException();
        }
        return new Wish(measure, low, high);
    }

    private static double number(Arguments words, Measure measure, int from, int to) {
        if (from >= to) {
            throw words.refuse(from, "a number is missing")
                    .allowing("a number" + units(measure))
                    .asException();
        }
        return words.until(to).from(from).read(text -> measure.scale().parse(text));
    }

    private static String units(Measure measure) {
        return measure.scale().units().isEmpty()
                ? ""
                : " with its unit, " + String.join(", ", measure.scale().units());
    }

    /** The index of the next word that compares, or the count of words. */
    private static int comparison(Arguments words, int from) {
        for (int i = from; i < words.size(); i++) {
            boolean isAt = words.get(i).isAny("at")
                    && i + 1 < words.size()
                    && words.get(i + 1).isAny("least", "most");
            if (isAt || words.get(i).isAny("between", "above", "below", "over", "under", ">=", "<=", ">", "<")) {
                return i;
            }
        }
        return words.size();
    }

    private static boolean isLow(Arguments words, int comparison) {
        return words.get(comparison).isAny("above", "over", ">=", ">")
                || (words.get(comparison).isAny("at")
                        && words.get(comparison + 1).isAny("least"));
    }

    /** Reads aims with a word between them. */
    static List<Aim> aims(Session session, Arguments words, String... between) {
        List<Aim> aims = new ArrayList<>();
        int at = 0;
        while (at < words.size() || aims.isEmpty()) {
            int end = Clauses.indexOf(words, at, between);
            Arguments one = words.until(end).from(at);
            if (one.isEmpty()) {
                throw words.refuse(at, "no figure is named")
                        .allowing("a figure, with lowest or highest ahead of it or near and a number behind it")
                        .asException();
            }
            aims.add(aim(session, one));
            at = end + 1;
        }
        return aims;
    }

    private static Aim aim(Session session, Arguments words) {
        boolean low = words.get(0).isAny("lowest", "least", "low", "smallest");
        boolean high = words.get(0).isAny("highest", "most", "high", "greatest");
        int from = low || high ? 1 : 0;
        int weight = Clauses.indexOf(words, from, "weight");
        int near = Clauses.indexOf(words.until(weight), from, "near");
        if (Math.min(near, weight) == from) {
            throw words.refuse(from, "no figure is named")
                    .allowing("a figure, with lowest or highest ahead of it or near and a number behind it")
                    .asException();
        }
        Measure measure = measure(session, words.until(Math.min(near, weight)).from(from));
        Aim aim;
        if (near < weight) {
            double target = number(words, measure, near + 1, weight);
            aim = words.until(weight).from(near + 1).read(text -> Aim.near(measure, target));
        } else if (from == 0) {
            aim = words.read(text -> Aim.better(measure));
        } else {
            aim = Aim.of(measure, low ? Objective.Goal.LOWEST : Objective.Goal.HIGHEST);
        }
        return weight < words.size() ? weighed(words, aim, weight) : aim;
    }

    private static Aim weighed(Arguments words, Aim aim, int weight) {
        Arguments number = words.from(weight + 1);
        return number.read(text -> {
            if (!NUMBER.matcher(text).matches()) {
                throw Refusal.of("weight", text, "is no number")
                        .allowing("a number above 0, such as 2")
                        .asException();
            }
            return aim.weighing(Double.parseDouble(text));
        });
    }
}
