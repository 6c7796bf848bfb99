package drivetrain.repl.command.compare;

import drivetrain.combination.Combination;
import drivetrain.comparison.Sweep;
import drivetrain.comparison.SweepResult;
import drivetrain.comparison.Wish;
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
import java.util.concurrent.CancellationException;
import java.util.function.Function;

/** {@code sweep}: every package that lists of parts allow. */
public final class SweepCommand implements Command {

    private static final Manual MANUAL = Manual.of(
                    Topic.COMPARE,
                    "sweep PLACE PARTS [and PLACE PARTS ...] [where WISH and WISH ...] [best N] [by AIM and AIM ...]",
                    "try every package that lists of parts allow, and rank those that keep the wishes")
            .alias("try")
            .example(
                    "sweep axle all and tire all where rpm at 65 mph between 1800 and 2200 rpm best 5 by highest crawl"
                            + " ratio",
                    "sweep axle 3.07..5.38 step 0.01 where crawl ratio at least 40 by lowest rpm at 65 mph",
                    "sweep engine diesel and transmission all where crawl speed at most 1.2 mph by wheel torque weight"
                            + " 2 and rpm at 70 mph near 2000 rpm");

    private final Progress progress;

    /**
     * Makes the command.
     *
     * @param progress hears how far a long sweep is
     */
    public SweepCommand(Progress progress) {
        this.progress = progress;
    }

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        if (arguments.isEmpty()) {
            throw arguments
                    .refuse(0, "no parts are named")
                    .allowing("a place and its parts, such as sweep axle 3.73 or 4.10 and tire all")
                    .asException();
        }
        SweepWords words = SweepWords.read(session, arguments);
        Sweep sweep = words.sweep();
        SweepResult result = watched(arguments, words, progress, watch -> sweep.run(Planner.onAllProcessors(), watch));
        Combination present = session.combination();
        List<Wish> missed = sweep.wishes().stream()
                .filter(wish ->
                        !wish.isKeptBy(wish.measure().of(present).value().orElse(Double.NaN)))
                .toList();
        return Result.answer(session, SweepReport.of(result, missed, session.units()));
    }

    /** Runs a search that is stopped when it turns out to take long and nobody has agreed to that. */
    static <T> T watched(Arguments arguments, SweepWords words, Progress progress, Function<SweepWatch, T> search) {
        SweepWatch watch = new SweepWatch(progress, words.isConfirmed());
        try {
            return arguments.read(text -> search.apply(watch));
        } catch (CancellationException stopped) {
            if (watch.expected() == 0.0) {
                throw stopped;
            }
            throw arguments
                    .refuse(
                            0,
                            "these " + words.sweep().combinations() + " packages would take "
                                    + SweepWatch.words(watch.expected()) + " or so")
                    .allowing("narrower lists, or --yes at the end of the line to wait that long")
                    .asException();
        }
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return SentenceOffers.ofSweep(session, before);
    }
}
