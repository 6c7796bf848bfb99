package drivetrain.comparison;

import drivetrain.assessment.LoadsAnswer;
import drivetrain.assessment.Question;
import drivetrain.assessment.SupplyAnswer;
import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.fuel.RunOut;
import drivetrain.fuel.SupplyPoint;
import drivetrain.quantity.Display;
import drivetrain.quantity.Power;

/**
 * Measures of what is left to a limit.
 *
 * <p>Their number is the limit over what is asked of it, which is above zero and can be weighed by proportion; it is read and shown as the margin that the
 * checks name.
 */
final class ReserveMeasures {

    private ReserveMeasures() {}

    /** The rating of the weakest rated part over the greatest torque that it sees. */
    static Measure load() {
        return Measure.of(
                "loadMargin",
                "load margin",
                Better.HIGHER,
                Scale.marginBelow(1),
                combination -> MeasureGround.of(LoadsAnswer.of(combination)).and(unrated(combination)),
                combination -> LoadsAnswer.of(combination)
                        .then(answer ->
                                answer.weakest().map(part -> 1.0 / part.used().orThrow())));
    }

    private static MeasureGround unrated(Combination combination) {
        return LoadsAnswer.of(combination)
                .then(LoadsAnswer::unratedAssumption)
                .value()
                .map(MeasureGround::of)
                .orElseGet(MeasureGround::none);
    }

    /** The most that the fuel supply delivers at the low voltage over what the engine burns at its greatest power. */
    static Measure fuel() {
        return Measure.of(
                "fuelMargin",
                "fuel margin",
                Better.HIGHER,
                Scale.marginAbove(1),
                combination -> MeasureGround.of(Question.SUPPLY.of(combination)),
                combination -> SupplyAnswer.peakDemand(combination)
                        .then(demand -> SupplyAnswer.capacity(combination)
                                .map(SupplyPoint::flow)
                                .map(flow -> flow.ratioTo(demand.volume()))));
    }

    /** The engine power at which the first part of the fuel supply runs out. */
    static Measure power() {
        return Measure.of(
                "supportedPower",
                "supported power",
                Better.HIGHER,
                Scale.of(Power.KIND, Display.POWER),
                combination -> MeasureGround.of(Question.SUPPLY.of(combination)),
                combination -> SupplyAnswer.of(combination)
                        .then(answer -> Outcome.of(
                                        answer.first(), "no part of the fuel supply is known to run out at some power")
                                .then(RunOut::power)
                                .map(Power::si)));
    }
}
