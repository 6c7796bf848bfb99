package drivetrain.repl.command.keep;

import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;

/** {@code quit}: end the shell. */
public final class QuitCommand implements Command {

    private static final Manual MANUAL =
            Manual.of(Topic.KEEP, "quit", "end the shell").alias("exit").example("quit");

    /** Makes the command. */
    public QuitCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return Result.last(session);
    }
}
