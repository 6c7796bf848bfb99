package drivetrain.engine;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Torque;
import java.util.List;
import java.util.Optional;

/** Nothing is known of the torque: speeds can be computed, torques cannot. */
public record NoTorque() implements TorqueSource {

    private static final String REASON = "the engine has no torque curve";

    @Override
    public Outcome<Torque> torqueAt(AngularSpeed speed) {
        return Outcome.notEvaluated(REASON);
    }

    @Override
    public Outcome<OperatingPoint> peakTorque() {
        return Outcome.notEvaluated(REASON);
    }

    @Override
    public Outcome<OperatingPoint> peakPower() {
        return Outcome.notEvaluated(REASON);
    }

    @Override
    public Optional<SpeedBand> band() {
        return Optional.empty();
    }

    @Override
    public Optional<OperatingPoint> slowestMeasurement() {
        return Optional.empty();
    }

    @Override
    public List<Assumption> assumptions() {
        return List.of();
    }

    @Override
    public Outcome<Working> torqueWorking(AngularSpeed speed) {
        return Outcome.notEvaluated(REASON);
    }

    @Override
    public Outcome<Working> peakTorqueWorking() {
        return Outcome.notEvaluated(REASON);
    }

    @Override
    public Outcome<Working> peakPowerWorking() {
        return Outcome.notEvaluated(REASON);
    }

    @Override
    public String text() {
        return "";
    }
}
