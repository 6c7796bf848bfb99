package drivetrain.repl.command.compare;

import drivetrain.document.OrderFile;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Kept;
import drivetrain.repl.session.Session;
import drivetrain.report.Cell;
import drivetrain.report.Column;
import drivetrain.report.Grid;
import drivetrain.report.Report;
import drivetrain.report.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** {@code keep}: set the package in hand aside under a name, to be compared with others. */
public final class KeepCommand implements Command {

    private static final int MOST = OrderFile.MOST_KEPT;

    private static final Manual MANUAL = Manual.of(
                    Topic.COMPARE, "keep [NAME]", "set the package in hand aside under a name, for compare")
            .alias("remember")
            .example("keep stock", "keep");

    /** Makes the command. */
    public KeepCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        arguments.requireAtMost(1, MANUAL.usage());
        if (arguments.isEmpty()) {
            return Result.answer(session, list(session.setup().aside()));
        }
        String name = arguments.get(0).text();
        if (!OrderFile.isName(name)) {
            throw arguments
                    .refuse(0, "cannot be the name of a kept package")
                    .allowing(OrderFile.NAMES)
                    .asException();
        }
        if (session.setup().aside().size() >= MOST && !session.setup().aside().containsKey(name)) {
            throw arguments
                    .refuse(0, "is one package too many")
                    .allowing("at most " + MOST + " kept packages; a name that is kept already is replaced")
                    .asException();
        }
        return Result.changed(session.keep(arguments.line().strip(), name), "Kept: " + name + ".");
    }

    private static Report list(Map<String, Kept> aside) {
        List<List<Cell>> rows = new ArrayList<>();
        aside.forEach((name, kept) -> rows.add(List.of(
                Cell.of(name),
                Cell.of(kept.specification().title()),
                Cell.of(kept.shelf().name()))));
        String count =
                rows.isEmpty() ? "No package is" : rows.size() == 1 ? "One package is" : rows.size() + " packages are";
        return Report.of(
                "keep",
                Sentence.answer(count + " kept."),
                new Grid(
                        "kept",
                        "",
                        List.of(
                                Column.ofText("name", "name"),
                                Column.ofText("title", "title"),
                                Column.ofText("shelf", "shelf")),
                        rows));
    }
}
