package drivetrain.repl.command.ask;

import drivetrain.assessment.TireAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.TireReport;

/** What {@code explain tire} asks: size and rolling circumference of the tire. */
public final class TireQuestion implements QuestionCommand<TireAnswer> {

    private static final Manual MANUAL = Manual.of(Topic.ROAD, "tire", "size and rolling circumference of the tire")
            .alias("tyre")
            .example("tire");

    /** Makes the command. */
    public TireQuestion() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<TireAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return TireAnswer.of(session.combination());
    }

    @Override
    public Report report(TireAnswer answer, UnitSystem units) {
        return TireReport.of(answer, units);
    }
}
