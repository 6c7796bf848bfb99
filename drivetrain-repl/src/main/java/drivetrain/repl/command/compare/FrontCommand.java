package drivetrain.repl.command.compare;

import drivetrain.comparison.Sweep;
import drivetrain.comparison.SweepResult;
import drivetrain.planner.Planner;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Progress;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.SweepReport;
import java.util.List;

/** {@code front}: the packages that cannot be bettered in one figure without a loss in another. */
public final class FrontCommand implements Command {

    private static final Manual MANUAL = Manual.of(
                    Topic.COMPARE,
                    "front AIM against AIM [against AIM] over PLACE PARTS [and PLACE PARTS ...] [where WISH and WISH"
                            + " ...]",
                    "the packages that cannot be bettered in one figure without a loss in another")
            .alias("pareto", "trade-off")
            .example("front lowest rpm at 65 mph against highest crawl ratio over axle all and transmission all");

    private final Progress progress;

    /**
     * Makes the command.
     *
     * @param progress hears how far a long search is
     */
    public FrontCommand(Progress progress) {
        this.progress = progress;
    }

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        SweepWords words = SweepWords.readFront(session, arguments);
        Sweep sweep = words.sweep();
        List<SweepResult.Row> front = SweepCommand.watched(
                arguments, words, progress, watch -> sweep.front(Planner.onAllProcessors(), watch));
        return Result.answer(session, SweepReport.front(sweep, front, session.units()));
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return SentenceOffers.ofFront(session, before);
    }
}
