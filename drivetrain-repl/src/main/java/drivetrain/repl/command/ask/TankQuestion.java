package drivetrain.repl.command.ask;

import drivetrain.assessment.TankAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.TankReport;

/** What {@code explain tank} asks: range, expansion and vapor of the tank. */
public final class TankQuestion implements QuestionCommand<TankAnswer> {

    private static final Manual MANUAL = Manual.of(Topic.FUEL, "tank", "range, expansion and vapor of the tank")
            .example("tank");

    /** Makes the command. */
    public TankQuestion() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<TankAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return TankAnswer.of(session.combination());
    }

    @Override
    public Report report(TankAnswer answer, UnitSystem units) {
        return TankReport.of(answer, units);
    }
}
