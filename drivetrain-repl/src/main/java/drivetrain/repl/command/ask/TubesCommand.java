package drivetrain.repl.command.ask;

import drivetrain.assessment.TubesAnswer;
import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.TubesReport;
import java.util.List;
import java.util.Locale;

/** {@code tubes}: which stock tube a driveshaft needs. */
public final class TubesCommand implements QuestionCommand<TubesAnswer> {

    private static final Length LONGEST = Length.ofMeters(5.0);

    private static final Manual MANUAL = Manual.of(
                    Topic.SHAFTS,
                    "tubes LENGTH [at RPM]",
                    "stock tubes for a shaft of that length, at its greatest speed unless one is named")
            .alias("tubing")
            .example("tubes 48 in", "tubes 1300 mm at 5500 rpm");

    /** Makes the command. */
    public TubesCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<TubesAnswer> ask(Session session, Arguments arguments) {
        int at = 0;
        while (at < arguments.size() && !arguments.get(at).isAny("at")) {
            at++;
        }
        if (at == 0) {
            throw arguments
                    .refuse(0, "no length is named")
                    .allowing(MANUAL.usage())
                    .asException();
        }
        Length length = AskedQuantity.read(Length.KIND, LONGEST, arguments.until(at), "mm", "in");
        Combination combination = session.combination();
        if (at == arguments.size()) {
            return arguments.until(at).read(text -> TubesAnswer.atGreatest(combination, length));
        }
        AngularSpeed speed = AskedQuantity.read(AngularSpeed.KIND, EngineSpeedQuestion.MOST, arguments.from(at), "rpm");
        return arguments.read(text -> Outcome.of(TubesAnswer.at(combination, length, speed)));
    }

    @Override
    public Report report(TubesAnswer answer, UnitSystem units) {
        return TubesReport.of(answer, units);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (before.isEmpty()) {
            return List.of();
        }
        String last = before.get(before.size() - 1).toLowerCase(Locale.ROOT);
        boolean bare = last.chars().allMatch(c -> (c >= '0' && c <= '9') || c == '.');
        if (before.contains("at")) {
            return bare ? Offer.of("rpm") : List.of();
        }
        return bare ? Offer.of("mm", "in", "cm", "m", "ft") : Offer.of("at");
    }
}
