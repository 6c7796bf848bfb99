package drivetrain.gearing;

import drivetrain.finding.Assumption;
import drivetrain.quantity.AngularSpeed;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A friction clutch, closed: the engine turns with the input shaft and gives it its torque. */
public record Clutch() implements Coupling {

    @Override
    public Optional<AngularSpeed> slipping(AngularSpeed kinematic) {
        return Optional.empty();
    }

    @Override
    public OptionalDouble stallMultiplication() {
        return OptionalDouble.of(1.0);
    }

    @Override
    public List<Assumption> speedAssumptions() {
        return List.of();
    }

    @Override
    public String text() {
        return "clutch";
    }
}
