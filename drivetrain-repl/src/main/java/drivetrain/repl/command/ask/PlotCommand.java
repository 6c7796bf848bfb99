package drivetrain.repl.command.ask;

import drivetrain.assessment.DrivingForceAnswer;
import drivetrain.assessment.RoadSpeedsAnswer;
import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.finding.Outcome;
import drivetrain.gearing.Range;
import drivetrain.quantity.AngularSpeed;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.DrivingForcePlot;
import drivetrain.report.Report;
import drivetrain.report.SpeedsPlot;
import java.util.List;
import java.util.Locale;

/** {@code plot speeds}, {@code plot force}, {@code plot power}: every gear of a range, drawn; {@code plot travel}: a driveshaft over the suspension travel; {@code plot modes}: how it bends; {@code plot supply}: the fuel supply. */
public final class PlotCommand implements Command {

    private static final AngularSpeed LEFT_EDGE = AngularSpeed.ofRpm(500.0);

    private static final Manual MANUAL = Manual.of(
                    Topic.WHOLE,
                    "plot speeds|force|power [low] | travel|modes [front|rear] | supply [VOLTAGE]",
                    "draw every gear of a range: road speed over engine speed, force or power at the wheels over road speed; or a driveshaft"
                            + " over the suspension travel or in its bending modes, or the fuel supply")
            .alias("draw", "graph")
            .example("plot speeds", "plot force", "plot power low", "plot travel rear", "plot modes", "plot supply");

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
        if (!arguments.isEmpty() && arguments.get(0).isAny("supply")) {
            return Result.answer(session, FuelPlot.of(session, arguments.from(1)));
        }
        if (!arguments.isEmpty() && arguments.get(0).isAny("modes", "mode")) {
            return Result.answer(session, ModesDrawing.of(session.combination(), arguments.from(1)));
        }
        if (arguments.isEmpty()) {
            throw arguments
                    .refuse(0, "nothing is named to be drawn")
                    .allowing(MANUAL.usage())
                    .asException();
        }
        arguments.requireAtMost(2, MANUAL.usage());
        Combination combination = session.combination();
        Range range = range(arguments);
        return Result.answer(session, Drawn.of(plot(arguments, combination, range)));
    }

    private static Outcome<Report> plot(Arguments arguments, Combination combination, Range range) {
        if (arguments.get(0).isAny("speeds", "speed")) {
            return speeds(combination, range);
        }
        if (arguments.get(0).isAny("force", "forces")) {
            return DrivingForceAnswer.of(combination, range).map(DrivingForcePlot::ofForce);
        }
        if (arguments.get(0).isAny("power", "powers")) {
            return DrivingForceAnswer.of(combination, range).map(DrivingForcePlot::ofPower);
        }
        throw arguments.refuse(0, "cannot be drawn").allowing(MANUAL.usage()).asException();
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

    private static Outcome<Report> speeds(Combination combination, Range range) {
        Outcome<RoadSpeedsAnswer> fast = RoadSpeedsAnswer.atMaximum(combination);
        AngularSpeed left = combination
                .engine()
                .map(Part::item)
                .flatMap(engine -> engine.idle())
                .orElse(LEFT_EDGE);
        return fast.then(right -> has(right, range))
                .then(right -> RoadSpeedsAnswer.at(combination, left).map(slow -> SpeedsPlot.of(slow, right, range)));
    }

    private static Outcome<RoadSpeedsAnswer> has(RoadSpeedsAnswer answer, Range range) {
        boolean geared = answer.rows().stream().anyMatch(row -> row.gear().range() == range);
        return geared ? Outcome.of(answer) : Outcome.notEvaluated("the transfer case has no low range");
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (before.isEmpty()) {
            return Offer.of("speeds", "force", "power", "travel", "modes", "supply");
        }
        if (before.size() == 1
                && List.of("travel", "modes").contains(before.get(0).toLowerCase(Locale.ROOT))) {
            return Offer.of("front", "rear");
        }
        boolean drawable = before.size() == 1
                && List.of("speeds", "force", "power").contains(before.get(0).toLowerCase(Locale.ROOT));
        return drawable ? Offer.of("low", "high") : List.of();
    }
}
