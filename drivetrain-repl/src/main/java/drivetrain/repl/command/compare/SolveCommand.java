package drivetrain.repl.command.compare;

import drivetrain.comparison.Lever;
import drivetrain.comparison.Measure;
import drivetrain.comparison.MeasureWords;
import drivetrain.comparison.Measures;
import drivetrain.comparison.Solve;
import drivetrain.refusal.RefusedException;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.SolveReport;
import java.util.List;

/** {@code solve}: the part that a wish needs. */
public final class SolveCommand implements Command {

    private static final Manual MANUAL = Manual.of(
                    Topic.COMPARE,
                    "solve PART for FIGURE VALUE [at SPEED]",
                    "what a part would have to be for a figure, and the nearest ones on the shelf")
            .alias("find")
            .example(
                    "solve axle for cruise 2000 rpm at 65 mph",
                    "solve transfer low for crawl 60",
                    "solve tire for speedometer exact",
                    "solve axle for crawl speed 1.2 mph");

    /** Makes the command. */
    public SolveCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        int word = Clauses.indexOf(arguments, 0, "for");
        if (word == 0 || word + 2 >= arguments.size()) {
            throw arguments
                    .refuse(word == 0 ? 0 : arguments.size(), "a part, \"for\", a figure and its value are needed")
                    .allowing(MANUAL.usage())
                    .asException();
        }
        Lever lever = arguments.until(word).read(Lever::parse);
        Arguments wish = arguments.from(word + 1);
        int at = speedStart(wish);
        Arguments named = wish.until(at);
        int value = valueStart(session, named, wish.from(at));
        Measure measure = measure(session, named.until(value), wish.from(at));
        double target = named.from(value).read(text -> target(measure, text));
        return Result.answer(
                session,
                SolveReport.of(
                        wish.read(text -> Solve.of(
                                session.specification(), session.setup().shelf().catalog(), lever, measure, target)),
                        session.combination(),
                        session.units()));
    }

    private static double target(Measure measure, String text) {
        return measure == Measures.SPEEDOMETER && text.equalsIgnoreCase("exact")
                ? 1.0
                : measure.scale().parse(text);
    }

    /** A road speed at the end of the wish. */
    private static int speedStart(Arguments wish) {
        for (int i = wish.size() - 2; i > 0; i--) {
            if (wish.get(i).isAny("at")) {
                return i;
            }
        }
        return wish.size();
    }

    private static Measure measure(Session session, Arguments name, Arguments speed) {
        String behind = speed.isEmpty() ? "" : " " + speed.text();
        return name.read(
                text -> MeasureWords.parse(text + behind, session.combination().cruise()));
    }

    /** The index of the first word of the value: behind the longest name of a figure. */
    private static int valueStart(Session session, Arguments named, Arguments speed) {
        for (int words = named.size() - 1; words > 0; words--) {
            try {
                measure(session, named.until(words), speed);
                return words;
            } catch (RefusedException noFigure) {
                if (words == 1) {
                    throw noFigure;
                }
            }
        }
        throw named.refuse(named.size(), "a value is missing behind the figure")
                .allowing(MANUAL.usage())
                .asException();
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return SentenceOffers.ofSolve(before);
    }
}
