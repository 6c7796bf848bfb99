package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.engine.Engine;
import drivetrain.engine.OperatingPoint;
import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.gearing.Converter;
import drivetrain.gearing.ConverterMatch;
import drivetrain.gearing.Coupling;
import drivetrain.gearing.GearTrain;
import drivetrain.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The greatest torque that the engine sends into the transmission.
 *
 * @param engine the engine's own greatest torque, or what is missing
 * @param behindCoupling that at the transmission's input, with a converter at stall, or what is missing
 * @param assumptions what it rests on
 */
record InputTorque(Outcome<Torque> engine, Outcome<Torque> behindCoupling, List<Assumption> assumptions) {

    private static final Assumption UPPER_BOUND = Assumption.flagged(
            "torque at stall",
            "the converter's stall speed is not known: its stall torque ratio is taken with the engine's greatest torque, which is an upper bound",
            Source.derived("at stall the engine gives at most its greatest torque"));
    private static final Assumption NO_SHOCK = Assumption.of(
            "shock",
            "a dropped clutch or a hopping tire sends more than this",
            Source.derived("steady torque is counted"));

    static InputTorque of(Combination combination, GearTrain train) {
        Outcome<Engine> engine = combination.needEngine();
        Outcome<Torque> peak = engine.then(Engine::peakTorque).map(OperatingPoint::torque);
        List<Assumption> assumptions = new ArrayList<>();
        engine.value().ifPresent(known -> assumptions.addAll(known.assumptions()));
        assumptions.add(NO_SHOCK);
        Coupling coupling = train.transmission().coupling();
        if (!(coupling instanceof Converter converter)) {
            return new InputTorque(peak, peak, assumptions);
        }
        Optional<ConverterMatch> match = FullLoadEngine.of(combination)
                .then(fullLoad -> GearPulls.match(converter, fullLoad))
                .value();
        if (match.isPresent()) {
            assumptions.addAll(match.get().assumptions());
            Torque stall = match.get().stall().turbineTorque();
            return new InputTorque(peak, peak.map(known -> known.isGreaterThan(stall) ? known : stall), assumptions);
        }
        if (converter.stallTorqueRatio().isEmpty()) {
            return new InputTorque(
                    peak,
                    Outcome.notEvaluated(
                            "the stall torque ratio of the converter is not known; type it behind the transmission: converter stall 2.0"),
                    assumptions);
        }
        assumptions.add(UPPER_BOUND);
        double ratio = converter.stallTorqueRatio().getAsDouble();
        return new InputTorque(peak, peak.map(known -> known.times(ratio)), assumptions);
    }
}
