package drivetrain.repl.command.ask;

import drivetrain.assessment.TravelAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.TravelReport;

/** {@code travel}: the driveshafts over the travel of their axles. */
public final class TravelCommand implements QuestionCommand<TravelAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.SHAFTS,
                    "travel",
                    "length and joint angles of the driveshafts over the whole suspension travel")
            .alias("plunge")
            .example("travel");

    /** Makes the command. */
    public TravelCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<TravelAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return TravelAnswer.of(session.combination());
    }

    @Override
    public Report report(TravelAnswer answer, UnitSystem units) {
        return TravelReport.of(answer, units);
    }
}
