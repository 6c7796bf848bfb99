package drivetrain.repl.command.keep;

import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.repl.session.Timeline;
import drivetrain.report.Report;
import drivetrain.report.Sentence;

/** {@code redo}: make again what was undone. */
public final class RedoCommand implements Command {

    private static final Manual MANUAL =
            Manual.of(Topic.KEEP, "redo", "make again what was undone").example("redo");

    /** Makes the command. */
    public RedoCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        String what = session.timeline()
                .lastUndone()
                .map(Timeline.Change::what)
                .orElseThrow(() ->
                        arguments.refuse(0, "nothing is there to be made again").asException());
        Session next = session.redo().orElse(session);
        return Result.answer(next, Report.of("redo", Sentence.answer("Redone: " + what + ".")));
    }
}
