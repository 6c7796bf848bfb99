package drivetrain.repl.command.ask;

import drivetrain.assessment.PullAnswer;
import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Speed;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.PullReport;
import drivetrain.report.Report;
import drivetrain.road.Grade;
import java.util.List;
import java.util.Locale;

/** {@code pull}: which gear holds a speed on a grade. */
public final class PullCommand implements QuestionCommand<PullAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ROAD,
                    "pull [GRADE] [at SPEED]",
                    "which gear holds a speed on a grade, on the level and at the order's cruise speed unless they are named")
            .alias("climb", "hold")
            .example("pull 6 % at 65 mph", "pull 1 in 4 at 10 km/h", "pull at 75 mph");

    /** Makes the command. */
    public PullCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<PullAnswer> ask(Session session, Arguments arguments) {
        int at = 0;
        while (at < arguments.size() && !arguments.get(at).isAny("at")) {
            at++;
        }
        Grade grade = grade(arguments.until(at));
        Combination combination = session.combination();
        Speed speed = at == arguments.size() ? cruise(combination, arguments) : speed(arguments, at + 1);
        return arguments.read(text -> PullAnswer.at(combination, grade, speed));
    }

    private static Grade grade(Arguments words) {
        if (words.isEmpty()) {
            return Grade.level();
        }
        boolean named = words.size() > 1 && words.get(words.size() - 1).isAny("grade");
        return (named ? words.until(words.size() - 1) : words).read(Grade::parse);
    }

    private static Speed speed(Arguments arguments, int start) {
        if (start == arguments.size()) {
            throw arguments
                    .refuse(start, "no road speed stands behind \"at\"")
                    .allowing("a speed with its unit, such as pull 6 % at 65 mph")
                    .asException();
        }
        return AskedQuantity.read(Speed.KIND, AskedQuantity.FASTEST, arguments.from(start), "mph", "km/h");
    }

    private static Speed cruise(Combination combination, Arguments arguments) {
        return combination
                .cruise()
                .orElseThrow(() -> arguments
                        .refuse(arguments.size(), "no road speed is named, and the order names none")
                        .allowing("a speed with its unit, such as pull 6 % at 65 mph")
                        .asException());
    }

    @Override
    public Report report(PullAnswer answer, UnitSystem units) {
        return PullReport.of(answer, units);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (before.isEmpty()) {
            return Offer.of("level", "at");
        }
        String last = before.get(before.size() - 1).toLowerCase(Locale.ROOT);
        boolean number = last.chars().allMatch(c -> (c >= '0' && c <= '9') || c == '.');
        boolean behindAt = before.stream().anyMatch("at"::equalsIgnoreCase);
        if (behindAt) {
            return number ? Offer.of("mph", "km/h") : List.of();
        }
        return number ? Offer.of("%", "deg", "in") : Offer.of("at");
    }
}
