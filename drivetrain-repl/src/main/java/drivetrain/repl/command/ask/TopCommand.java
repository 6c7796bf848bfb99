package drivetrain.repl.command.ask;

import drivetrain.assessment.TopAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.TopReport;

/** {@code top}: how fast the vehicle really goes. */
public final class TopCommand implements QuestionCommand<TopAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ROAD,
                    "top",
                    "how fast it really goes: the lowest of power, gearing and speed limiter in each gear")
            .alias("top speed", "vmax", "maximum speed")
            .example("top");

    /** Makes the command. */
    public TopCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<TopAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return TopAnswer.of(session.combination());
    }

    @Override
    public Report report(TopAnswer answer, UnitSystem units) {
        return TopReport.of(answer, units);
    }
}
