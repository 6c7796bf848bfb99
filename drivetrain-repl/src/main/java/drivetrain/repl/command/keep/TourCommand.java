package drivetrain.repl.command.keep;

import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Cell;
import drivetrain.report.Column;
import drivetrain.report.Grid;
import drivetrain.report.Report;
import drivetrain.report.Sentence;
import java.util.List;

/** {@code tour}: the first lines to type, in order. */
public final class TourCommand implements Command {

    /** The lines of the tour; each can be typed as it stands, in this order. */
    public static final List<Stop> STOPS = List.of(
            new Stop("open demo", "take a ready package off the shelf"),
            new Stop("cruise 65 mph", "engine speed on the highway"),
            new Stop("what if axle 41/10", "what another axle would change"),
            new Stop("pull 6 % at 65 mph", "which gear holds a long grade"),
            new Stop("loads", "the greatest torques, and the weakest link"),
            new Stop("shafts", "whether the driveshafts run smoothly"),
            new Stop("supply", "whether the fuel keeps up"),
            new Stop("check", "what to look at before it is built"),
            new Stop("explain cruise 65 mph", "the working, with its sources"),
            new Stop("plot force", "every gear against what the road takes"));

    private static final Manual MANUAL =
            Manual.of(Topic.KEEP, "tour", "show the first lines to type").example("tour");

    /**
     * One line of the tour.
     *
     * @param line the line to type
     * @param why what it shows
     */
    public record Stop(String line, String why) {}

    /** Makes the command. */
    public TourCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        List<List<Cell>> rows = STOPS.stream()
                .map(stop -> List.of(Cell.of(stop.line()), Cell.of(stop.why())))
                .toList();
        List<Column> columns = List.of(Column.ofText("line", "type"), Column.ofText("why", "to see"));
        return Result.answer(
                session,
                Report.of(
                        "tour",
                        Sentence.answer("Ten lines, typed in this order, show what this shell is for."),
                        new Grid("stops", "", columns, rows)));
    }
}
