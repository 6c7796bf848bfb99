package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.gearing.AxleMatch;
import drivetrain.gearing.AxleRatio;
import drivetrain.gearing.AxleTie;
import drivetrain.gearing.GearTrain;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import drivetrain.tire.RollingCircumference;
import drivetrain.tire.Tire;
import drivetrain.tire.TireChecks;
import java.util.Optional;

/** Checks that need more than one part: the axles against each other, the tire against what the gearing allows. */
final class DriveChecks {

    private static final String AXLES = "front and rear axle";
    private static final Source AXLE_RULE =
            Source.derived("tied axles turn together: axle ratio over rolling circumference must agree");
    private static final String TOP = "gearing limit";
    private static final String LIMITER = "speed limiter";

    private DriveChecks() {}

    static Finding axleMatch(Combination combination) {
        return combination
                .gearTrain()
                .then(train -> match(combination, train))
                .fold(finding -> finding, reason -> Finding.notEvaluated(AXLES, reason, AXLE_RULE));
    }

    private static Outcome<Finding> match(Combination combination, GearTrain train) {
        AxleTie tie = train.transferCase().tie();
        if (tie == AxleTie.REAR_ONLY) {
            return Outcome.notEvaluated("only the rear axle is driven");
        }
        Outcome<AxleRatio> front = Outcome.of(combination.frontAxle().map(Part::item), "no front axle is chosen");
        Outcome<Length> frontRoll =
                circumference(Outcome.of(combination.frontTire().map(Part::item), "no tire is chosen"));
        Outcome<Length> rearRoll = circumference(combination.needTire());
        return front.then(axle -> frontRoll.then(ahead -> rearRoll.map(
                behind -> AxleMatch.of(axle.ratio(), ahead, train.rear().ratio(), behind, tie))));
    }

    private static Outcome<Length> circumference(Outcome<Tire> tire) {
        return tire.then(Tire::rolling).map(RollingCircumference::circumference);
    }

    /**
     * Holds the tire's speed symbol against the speed at which the gearing, or a speed limiter before it, stops the vehicle. A tire below it is marginal, not exceeded: the vehicle may lack the
     * power to get there, and {@link #reachedSpeed} tells where it does not.
     */
    static Finding topSpeed(Combination combination, Outcome<RoadSpeedsAnswer> atMaximum) {
        Outcome<Speed> geared = atMaximum.map(
                answer -> answer.rows().get(answer.rows().size() - 1).roadSpeed());
        Optional<Speed> limiter = combination
                .limiter()
                .filter(held ->
                        geared.value().filter(top -> !held.isLessThan(top)).isEmpty());
        String which = limiter.isPresent() ? LIMITER : TOP;
        String statement = limiter.isPresent()
                ? "the speed limiter allows more than the tire does; have it set lower"
                : "the gearing allows more than the tire does; the driver must keep below the tire's limit";
        Outcome<Speed> end = limiter.<Outcome<Speed>>map(Outcome::of).orElse(geared);
        return end.then(top -> combination
                        .needTire()
                        .map(tire -> leftToTheDriver(TireChecks.speed(which, tire, top), statement)))
                .fold(
                        finding -> finding,
                        reason -> Finding.notEvaluated(
                                which + " tire speed",
                                reason,
                                Source.standard("ISO 4000-1, UN Regulations 30 and 54: speed symbol")));
    }

    /**
     * Holds the tire's speed symbol against the speed that the vehicle really reaches. The symbol is the greatest speed of the tire, so that one below the
     * reachable speed is exceeded: power and gearing take the vehicle there.
     */
    static Finding reachedSpeed(String which, Tire tire, Speed reached) {
        Finding found = TireChecks.speed(which, tire, reached);
        return found.verdict() == Verdict.EXCEEDED
                ? found.judged(
                        Verdict.EXCEEDED,
                        "the vehicle reaches more than the tire may run; fit tires of a higher speed symbol or have its speed limited to what they may run")
                : found;
    }

    /** A limit that the driver can keep is marginal where the vehicle could exceed it, not exceeded. */
    static Finding leftToTheDriver(Finding found, String statement) {
        return found.verdict() == Verdict.EXCEEDED ? found.judged(Verdict.MARGINAL, statement) : found;
    }
}
