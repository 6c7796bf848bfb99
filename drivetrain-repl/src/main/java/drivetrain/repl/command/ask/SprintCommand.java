package drivetrain.repl.command.ask;

import drivetrain.assessment.SprintAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Speed;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.SprintReport;
import java.util.List;

/** {@code sprint}: time and distance from rest to a speed. */
public final class SprintCommand implements QuestionCommand<SprintAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ROAD,
                    "sprint [to SPEED]",
                    "time and distance from rest to a speed, 60 mph unless one is named, and over a quarter mile")
            .alias("acceleration", "accelerate")
            .example("sprint", "sprint to 100 km/h");

    /** Makes the command. */
    public SprintCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<SprintAnswer> ask(Session session, Arguments arguments) {
        boolean to = !arguments.isEmpty() && arguments.get(0).isAny("to");
        Arguments words = to ? arguments.from(1) : arguments;
        if (to && words.isEmpty()) {
            throw arguments
                    .refuse(1, "no speed stands behind \"to\"")
                    .allowing("a speed with its unit, such as sprint to 60 mph")
                    .asException();
        }
        Speed target = words.isEmpty()
                ? SprintAnswer.USUAL_TARGET
                : AskedQuantity.read(Speed.KIND, AskedQuantity.FASTEST, words, "mph", "km/h");
        return arguments.read(text -> SprintAnswer.to(session.combination(), target));
    }

    @Override
    public Report report(SprintAnswer answer, UnitSystem units) {
        return SprintReport.of(answer, units);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (before.isEmpty()) {
            return Offer.of("to");
        }
        return before.size() == 2 ? Offer.of("mph", "km/h") : List.of();
    }
}
