package drivetrain.repl.command.compare;

import drivetrain.combination.Combination;
import drivetrain.comparison.Lever;
import drivetrain.comparison.Measures;
import drivetrain.comparison.Scale;
import drivetrain.comparison.Tolerance;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.SpreadReport;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** {@code tolerance}: in which range the figures lie when parts are known only within a tolerance. */
public final class ToleranceCommand implements Command {

    private static final Scale PERCENT = Scale.percent(2);

    private static final Manual MANUAL = Manual.of(
                    Topic.COMPARE,
                    "tolerance PART PERCENT [and PART PERCENT ...]",
                    "the range of each figure when parts are known only within a tolerance")
            .alias("tolerances")
            .example("tolerance tire 1 %", "tolerance tire 1.5 % and idle 5 %");

    /** Makes the command. */
    public ToleranceCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        Map<Lever, Double> tolerances = new LinkedHashMap<>();
        int at = 0;
        while (at < arguments.size() || tolerances.isEmpty()) {
            int end = Clauses.indexOf(arguments, at, "and");
            Arguments one = arguments.until(end).from(at);
            int number = number(one);
            if (number == 0 || number == one.size()) {
                throw arguments
                        .refuse(Math.min(at + number, arguments.size()), "a part and its tolerance are needed")
                        .allowing(MANUAL.usage())
                        .asException();
            }
            Lever lever = one.until(number).read(Lever::parse);
            double fraction = one.from(number).read(PERCENT::parse);
            if (tolerances.put(lever, fraction) != null) {
                throw arguments
                        .refuse(at, "has two tolerances")
                        .allowing("one for each part")
                        .asException();
            }
            at = end + 1;
        }
        Combination combination = session.combination();
        return Result.answer(
                session,
                SpreadReport.of(
                        arguments.read(text -> Tolerance.of(combination, Measures.all(combination), tolerances)),
                        combination,
                        session.units()));
    }

    private static int number(Arguments words) {
        for (int i = 0; i < words.size(); i++) {
            char first =
                    words.get(i).text().isEmpty() ? ' ' : words.get(i).text().charAt(0);
            boolean isGear = i + 1 < words.size() && words.get(i + 1).isAny("gear");
            if (((first >= '0' && first <= '9') || first == '.') && !isGear) {
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
