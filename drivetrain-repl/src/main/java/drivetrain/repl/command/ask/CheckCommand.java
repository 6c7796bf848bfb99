package drivetrain.repl.command.ask;

import drivetrain.assessment.Assessment;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.FindingsReport;

/** {@code check}: every finding, worst first. */
public final class CheckCommand implements Command {

    private static final Manual MANUAL = Manual.of(
                    Topic.WHOLE, "check", "every limit that is exceeded, close or kept, worst first")
            .alias("checks", "findings")
            .example("check");

    /** Makes the command. */
    public CheckCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return Result.answer(session, FindingsReport.of(Assessment.of(session.combination())));
    }
}
