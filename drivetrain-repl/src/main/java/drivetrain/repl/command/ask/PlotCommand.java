package drivetrain.repl.command.ask;

import drivetrain.assessment.RoadSpeedsAnswer;
import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.finding.Outcome;
import drivetrain.gearing.Range;
import drivetrain.quantity.AngularSpeed;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Line;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.SpeedsPlot;
import java.util.List;
import java.util.Locale;

/** {@code plot speeds}: road speed against engine speed, drawn. */
public final class PlotCommand implements Command {

    private static final AngularSpeed LEFT_EDGE = AngularSpeed.ofRpm(500.0);

    private static final Manual MANUAL = Manual.of(
                    Topic.ASK,
                    "plot speeds [low] | travel [front|rear]",
                    "draw road speed against engine speed for every gear of a range, or a driveshaft over the suspension travel")
            .alias("draw", "graph")
            .example("plot speeds", "plot speeds low", "plot travel rear");

    /** Makes the command. */
    public PlotCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        if (!arguments.isEmpty() && arguments.get(0).isAny("travel")) {
            return Result.answer(session, TravelDrawing.of(session.combination(), arguments.from(1)));
        }
        if (arguments.isEmpty() || !arguments.get(0).isAny("speeds", "speed")) {
            throw arguments
                    .refuse(0, arguments.isEmpty() ? "nothing is named to be drawn" : "cannot be drawn")
                    .allowing(MANUAL.usage())
                    .asException();
        }
        arguments.requireAtMost(2, MANUAL.usage());
        return Result.answer(session, plot(session.combination(), range(arguments)));
    }

    private static Range range(Arguments arguments) {
        if (arguments.size() < 2 || arguments.get(1).isAny("high")) {
            return Range.HIGH;
        }
        if (!arguments.get(1).isAny("low")) {
            throw arguments.refuse(1, "is not a range").allowing("low or high").asException();
        }
        return Range.LOW;
    }

    private static Report plot(Combination combination, Range range) {
        Outcome<RoadSpeedsAnswer> fast = RoadSpeedsAnswer.atMaximum(combination);
        AngularSpeed left = combination
                .engine()
                .map(Part::item)
                .flatMap(engine -> engine.idle())
                .orElse(LEFT_EDGE);
        Outcome<Report> report = fast.then(right -> has(right, range))
                .then(right -> RoadSpeedsAnswer.at(combination, left).map(slow -> SpeedsPlot.of(slow, right, range)));
        return report.value()
                .orElseThrow(() -> Refusal.of(
                                "plot",
                                "",
                                "not evaluated because " + report.reason().orElse("something is missing"))
                        .in(Line.place(0))
                        .asException());
    }

    private static Outcome<RoadSpeedsAnswer> has(RoadSpeedsAnswer answer, Range range) {
        boolean geared = answer.rows().stream().anyMatch(row -> row.gear().range() == range);
        return geared ? Outcome.of(answer) : Outcome.notEvaluated("the transfer case has no low range");
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (before.isEmpty()) {
            return Offer.of("speeds", "travel");
        }
        if (before.size() == 1 && before.get(0).toLowerCase(Locale.ROOT).equals("travel")) {
            return Offer.of("front", "rear");
        }
        boolean speeds =
                before.size() == 1 && before.get(0).toLowerCase(Locale.ROOT).equals("speeds");
        return speeds ? Offer.of("low", "high") : List.of();
    }
}
