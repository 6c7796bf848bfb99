package drivetrain.repl.command.keep;

import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Facts;
import drivetrain.report.Report;
import java.util.List;

/** {@code title}: the name of the work in hand. */
public final class TitleCommand implements Command {

    private static final int LONGEST = 80;

    private static final Manual MANUAL =
            Manual.of(Topic.KEEP, "title [TEXT]", "name the work in hand").example("title coast tourer");

    /** Makes the command. */
    public TitleCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        if (arguments.isEmpty()) {
            Facts.Fact present = Facts.Fact.of("title", "title", session.title().orElse("none"));
            return Result.answer(session, Report.of("title", new Facts("settings", "", List.of(present))));
        }
        String title = arguments.read(TitleCommand::title);
        Session next =
                session.change(arguments.line().strip(), session.specification().titled(title));
        return Result.changed(next, "Title: " + title + ".");
    }

    private static String title(String text) {
        if (text.length() > LONGEST) {
            throw Refusal.of("title", text.substring(0, LONGEST) + "...", "is too long")
                    .allowing("at most " + LONGEST + " characters")
                    .asException();
        }
        return text;
    }
}
