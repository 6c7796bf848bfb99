package drivetrain.gearing;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Torque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A friction clutch, closed: the engine turns with the input shaft and gives it its torque.
 *
 * @param isStated false if nobody has said that it is a clutch and it is taken for one; the answers then say so
 * @param rating the greatest torque that it holds, where known
 */
public record Clutch(boolean isStated, Optional<Torque> rating) implements Coupling {

    private static final List<Assumption> TAKEN_FOR_GRANTED = List.of(Assumption.flagged(
            "coupling",
            "the transmission is taken to have a clutch, because nothing was said; \"converter\" behind its ratios makes it an automatic",
            Source.commonPractice("a row of ratios alone is read as a manual transmission")));

    /**
     * Checks the rating.
     *
     * @throws drivetrain.refusal.RefusedException if it is not greater than zero
     */
    public Clutch {
        rating = rating.map(torque -> torque.requirePositive("clutch rating"));
    }

    /** Makes a clutch that somebody has named and whose rating is not known. */
    public Clutch() {
        this(true, Optional.empty());
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
        return isStated ? "clutch" + PartName.torqueWords("clutch-rating", rating) : "";
    }
}
