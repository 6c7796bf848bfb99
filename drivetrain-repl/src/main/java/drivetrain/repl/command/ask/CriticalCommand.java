package drivetrain.repl.command.ask;

import drivetrain.assessment.CriticalSpeedAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.CriticalSpeedReport;
import drivetrain.report.Report;

/** {@code critical}: how near the driveshafts come to whirling. */
public final class CriticalCommand implements QuestionCommand<CriticalSpeedAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.SHAFTS, "critical", "critical speed of the driveshafts and how near they come to it")
            .alias("whirl", "critical speed")
            .example("critical");

    /** Makes the command. */
    public CriticalCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<CriticalSpeedAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return CriticalSpeedAnswer.of(session.combination());
    }

    @Override
    public Report report(CriticalSpeedAnswer answer, UnitSystem units) {
        return CriticalSpeedReport.of(answer, units);
    }
}
