package drivetrain.gearing;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.AngularSpeed;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A friction clutch, closed: the engine turns with the input shaft and gives it its torque.
 *
 * @param isStated false if nobody has said that it is a clutch and it is taken for one; the answers then say so
 */
public record Clutch(boolean isStated) implements Coupling {

    private static final List<Assumption> TAKEN_FOR_GRANTED = List.of(Assumption.flagged(
            "coupling",
            "the transmission is taken to have a clutch, because nothing was said; \"converter\" behind its ratios makes it an automatic",
            Source.commonPractice("a row of ratios alone is read as a manual transmission")));

    /** A clutch that somebody has named. */
    public Clutch() {
        this(true);
    }

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
        return isStated ? List.of() : TAKEN_FOR_GRANTED;
    }

    @Override
    public String text() {
        return isStated ? "clutch" : "";
    }
}
