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

/** {@code undo}: take the last change back. */
public final class UndoCommand implements Command {

    private static final Manual MANUAL =
            Manual.of(Topic.KEEP, "undo", "take the last change back").example("undo");

    /** Makes the command. */
    public UndoCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        String what = session.timeline()
                .lastDone()
                .map(Timeline.Change::what)
                .orElseThrow(() ->
                        arguments.refuse(0, "nothing is there to be undone").asException());
        Session next = session.undo().orElse(session);
        return Result.answer(next, Report.of("undo", Sentence.answer("Undone: " + what + ".")));
    }
}
