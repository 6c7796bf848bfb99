package drivetrain.repl.command.ask;

import drivetrain.assessment.RoadSpeedsAnswer;
import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.RoadSpeedsReport;
import java.util.List;

/** {@code speeds}: road speed in every gear. */
public final class SpeedsCommand implements QuestionCommand<RoadSpeedsAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ASK,
                    "speeds [RPM]",
                    "road speed in every gear, at the engine's maximum speed unless one is named")
            .alias("speed")
            .example("speeds", "speeds 3000 rpm");

    /** Makes the command. */
    public SpeedsCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<RoadSpeedsAnswer> ask(Session session, Arguments arguments) {
        Combination combination = session.combination();
        if (arguments.isEmpty()) {
            return RoadSpeedsAnswer.atMaximum(combination);
        }
        AngularSpeed engineSpeed = AskedQuantity.read(AngularSpeed.KIND, arguments, "rpm");
        return arguments.read(text -> RoadSpeedsAnswer.at(combination, engineSpeed));
    }

    @Override
    public Report report(RoadSpeedsAnswer answer, UnitSystem units) {
        return RoadSpeedsReport.of(answer, units);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return before.size() == 1 ? Offer.of("rpm") : List.of();
    }
}
