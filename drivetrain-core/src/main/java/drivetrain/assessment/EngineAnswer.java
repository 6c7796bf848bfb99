package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.engine.Engine;
import drivetrain.engine.OperatingPoint;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import java.util.List;

/**
 * What the engine gives: greatest torque and greatest power.
 *
 * @param engine the engine
 * @param peakTorque the point of greatest torque, or why it is not known
 * @param peakPower the point of greatest power, or why it is not known
 */
public record EngineAnswer(Engine engine, Outcome<OperatingPoint> peakTorque, Outcome<OperatingPoint> peakPower)
        implements Answer {

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or that no engine is chosen
     */
    public static Outcome<EngineAnswer> of(Combination combination) {
        return combination
                .needEngine()
                .map(engine -> new EngineAnswer(engine, engine.peakTorque(), engine.peakPower()));
    }

    @Override
    public List<Assumption> assumptions() {
        return engine.assumptions();
    }

    @Override
    public List<Finding> findings() {
        return engine.findings();
    }

    @Override
    public List<Caution> cautions() {
        return List.of();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("greatest torque and greatest power of the engine");
        engine.peakTorqueWorking().value().ifPresent(working::from);
        engine.peakPowerWorking().value().ifPresent(working::from);
        return working.build();
    }
}
