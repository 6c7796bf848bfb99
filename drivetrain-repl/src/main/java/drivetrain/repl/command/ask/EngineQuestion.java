package drivetrain.repl.command.ask;

import drivetrain.assessment.EngineAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.EngineReport;
import drivetrain.report.Report;

/** What {@code explain engine} asks: greatest torque and power of the engine. */
public final class EngineQuestion implements QuestionCommand<EngineAnswer> {

    private static final Manual MANUAL = Manual.of(Topic.ROAD, "engine", "greatest torque and power of the engine")
            .example("engine");

    /** Makes the command. */
    public EngineQuestion() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<EngineAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return EngineAnswer.of(session.combination());
    }

    @Override
    public Report report(EngineAnswer answer, UnitSystem units) {
        return EngineReport.of(answer, units);
    }
}
