package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Speed;
import java.util.Optional;

/** What it means that an order's speed limiter holds the vehicle at a road speed. */
final class SpeedLimiter {

    private static final Source GIVEN = Source.given("the order");

    private SpeedLimiter() {}

    /** What is taken for granted of a limiter, if there is one. */
    static Optional<Assumption> assumption(Combination combination) {
        return combination
                .limiter()
                .map(held -> Assumption.flagged(
                        "speed limiter",
                        "the speed limiter holds the vehicle at " + words(held)
                                + "; one that was set for another tire or axle lets it go faster or slower by as much as they differ: try it on the road",
                        GIVEN));
    }

    /** Whether the vehicle may go that fast; not evaluated above the limiter. */
    static Outcome<Speed> allowed(Combination combination, Speed wanted) {
        Optional<Speed> held = combination.limiter().filter(limiter -> limiter.isLessThan(wanted));
        return held.isEmpty()
                ? Outcome.of(wanted)
                : Outcome.notEvaluated("the speed limiter holds the vehicle at " + words(held.get())
                        + "; ask for no more than that, or type another limiter");
    }

    /** Whether the limiter lets the vehicle cruise at a speed, if there is one. */
    static Optional<Finding> cruise(Combination combination, Speed speed) {
        return combination
                .limiter()
                .map(held -> Finding.of(
                        "cruise below the speed limiter",
                        Figure.of(speed, Display.ROAD_SPEED),
                        Figure.of(held, Display.ROAD_SPEED),
                        Figure.of(held.minus(speed), Display.ROAD_SPEED),
                        speed.isGreaterThan(held) ? Verdict.EXCEEDED : Verdict.MET,
                        speed.isGreaterThan(held)
                                ? "the speed limiter does not let the vehicle go that fast"
                                : "the speed limiter lets the vehicle go that fast",
                        GIVEN));
    }

    private static String words(Speed speed) {
        return speed.format(Speed.MILE_PER_HOUR, 1) + " (" + speed.format(Speed.KILOMETER_PER_HOUR, 0) + ")";
    }
}
