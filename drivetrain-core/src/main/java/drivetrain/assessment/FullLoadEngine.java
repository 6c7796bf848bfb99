package drivetrain.assessment;

import drivetrain.atmosphere.Air;
import drivetrain.combination.Combination;
import drivetrain.engine.Aspiration;
import drivetrain.engine.Engine;
import drivetrain.engine.Ignition;
import drivetrain.engine.PowerCorrection;
import drivetrain.engine.SpeedBand;
import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The engine at full load in the air that the order names.
 *
 * @param engine the engine
 * @param band the speeds at which its torque is known
 * @param share the share of its stated torque that it gives in that air
 * @param correction how that share was found, where it was
 * @param assumptions what its torque rests on
 */
record FullLoadEngine(
        Engine engine,
        SpeedBand band,
        double share,
        Optional<PowerCorrection> correction,
        List<Assumption> assumptions) {

    private static final Assumption AS_STATED = Assumption.of(
            "air at the engine",
            "no air is named: the engine gives its torque as stated, in the reference air of its rating",
            Source.derived("a rating belongs to its reference air"));
    private static final Assumption CORRECTED = Assumption.flagged(
            "air at the engine",
            "the engine's torque changes with the air as SAE J1349 corrects it, its stated torque being that of the standard's reference air",
            Source.standard("SAE J1349 (June 1990)"));
    private static final Assumption BOOSTED = Assumption.flagged(
            "air at the engine",
            "a supercharged, turbocharged or diesel engine does not follow that correction: its torque is taken as stated, which is too much in thin air",
            Source.commonPractice("corrections for spark ignition describe naturally aspirated engines"));

    /** Copies the list. */
    FullLoadEngine {
        assumptions = List.copyOf(assumptions);
    }

    static Outcome<FullLoadEngine> of(Combination combination) {
        return combination
                .needEngine()
                .then(engine -> Outcome.of(engine.band(), "the engine's torque is not given")
                        .map(band -> of(engine, band, combination.air())));
    }

    private static FullLoadEngine of(Engine engine, SpeedBand band, Optional<Air> air) {
        List<Assumption> assumptions = new ArrayList<>(engine.assumptions());
        if (air.isEmpty()) {
            assumptions.add(AS_STATED);
            return new FullLoadEngine(engine, band, 1.0, Optional.empty(), assumptions);
        }
        if (engine.aspiration() != Aspiration.NATURAL || engine.ignition() != Ignition.SPARK) {
            assumptions.add(BOOSTED);
            return new FullLoadEngine(engine, band, 1.0, Optional.empty(), assumptions);
        }
        PowerCorrection correction =
                PowerCorrection.saeJ1349(air.get().dryPressure(), air.get().temperature(), engine.aspiration());
        assumptions.add(CORRECTED);
        assumptions.addAll(correction.assumptions());
        return new FullLoadEngine(engine, band, 1.0 / correction.factor(), Optional.of(correction), assumptions);
    }

    /** The torque at a speed, which is taken to the nearest end of the band. */
    Torque torqueAt(AngularSpeed speed) {
        return ratedAt(speed).times(share);
    }

    /** The stated torque at a speed, which is taken to the nearest end of the band. */
    Torque ratedAt(AngularSpeed speed) {
        AngularSpeed low = speed.isLessThan(band.lowest()) ? band.lowest() : speed;
        AngularSpeed inside = low.isGreaterThan(band.highest()) ? band.highest() : low;
        return engine.torqueAt(inside).orThrow();
    }

    List<Finding> findings() {
        return correction.map(PowerCorrection::findings).orElse(List.of());
    }
}
