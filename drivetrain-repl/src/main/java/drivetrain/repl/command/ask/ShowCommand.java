package drivetrain.repl.command.ask;

import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.SetupReport;

/** {@code show}: what is chosen. */
public final class ShowCommand implements Command {

    private static final Manual MANUAL =
            Manual.of(Topic.WHOLE, "show", "what is chosen").example("show");

    /** Makes the command. */
    public ShowCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return Result.answer(session, SetupReport.of(session.combination()));
    }
}
