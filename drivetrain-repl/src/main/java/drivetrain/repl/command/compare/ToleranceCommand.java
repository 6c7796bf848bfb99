package drivetrain.repl.command.compare;

import drivetrain.combination.Combination;
import drivetrain.comparison.Measures;
import drivetrain.comparison.Tolerance;
import drivetrain.comparison.Uncertain;
import drivetrain.comparison.UncertainWords;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.SpreadReport;
import java.util.ArrayList;
import java.util.List;

/** {@code tolerance}: in which range the figures lie when parts are known only within a tolerance. */
public final class ToleranceCommand implements Command {

    private static final String SIGNS = ".+-\u2212\u00b1";

    private static final Manual MANUAL = Manual.of(
                    Topic.COMPARE,
                    "tolerance PART PERCENT | torque curve PERCENT | angles DEGREES [and ...]",
                    "the range of each figure when parts, curve points or measured angles are known only within a tolerance")
            .alias("tolerances")
            .example(
                    "tolerance tire 1 %",
                    "tolerance tire 1.5 % and idle 5 %", "tolerance torque curve 3 % and angles 0.5 deg");

    /** Makes the command. */
    public ToleranceCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        List<Uncertain> uncertain = new ArrayList<>();
        int at = 0;
        while (at < arguments.size() || uncertain.isEmpty()) {
            int end = Clauses.indexOf(arguments, at, "and");
            Arguments one = arguments.until(end).from(at);
            int number = number(one);
            if (number == 0 || number == one.size()) {
                throw arguments
                        .refuse(Math.min(at + number, arguments.size()), "a part and its tolerance are needed")
                        .allowing(MANUAL.usage())
                        .asException();
            }
            Uncertain next = read(one.until(number), one.from(number));
            if (uncertain.stream().anyMatch(known -> known.word().equals(next.word()))) {
                throw arguments
                        .refuse(at, "has two tolerances")
                        .allowing("one for each part")
                        .asException();
            }
            uncertain.add(next);
            at = end + 1;
        }
        Combination combination = session.combination();
        return Result.answer(
                session,
                SpreadReport.of(
                        arguments.read(text -> Tolerance.of(combination, Measures.all(combination), uncertain)),
                        combination,
                        session.units()));
    }

    /** Reads a pair; a fault in the name is shown at the name, one in the tolerance at the tolerance. */
    private static Uncertain read(Arguments name, Arguments amount) {
        boolean isKnown =
                name.words().stream().anyMatch(word -> word.text().isEmpty()) || UncertainWords.isKnown(name.text());
        return isKnown
                ? amount.read(text -> UncertainWords.parse(name.text(), text))
                : name.read(text -> UncertainWords.parse(text, amount.text()));
    }

    private static int number(Arguments words) {
        for (int i = 0; i < words.size(); i++) {
            char first =
                    words.get(i).text().isEmpty() ? ' ' : words.get(i).text().charAt(0);
            boolean isGear = i + 1 < words.size() && words.get(i + 1).isAny("gear");
            boolean isNumber = (first >= '0' && first <= '9') || SIGNS.indexOf(first) >= 0;
            if (isNumber && !isGear) {
                return i;
            }
        }
        return words.size();
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return SentenceOffers.ofTolerance(before);
    }
}
