package drivetrain.tire;

import drivetrain.finding.Assumption;
import drivetrain.finding.Working;
import drivetrain.quantity.Length;
import drivetrain.quantity.RevolutionsPerDistance;
import java.util.List;
import java.util.Optional;

/**
 * The distance that a loaded, rolling tire covers in one turn.
 *
 * @param circumference the distance of one turn
 * @param basis what it rests on
 * @param diameter the overall diameter that it was computed from, where a rule was used
 * @param assumptions what was not measured on this tire
 */
public record RollingCircumference(
        Length circumference, RollingBasis basis, Optional<OverallDiameter> diameter, List<Assumption> assumptions) {

    /** Copies the list. */
    public RollingCircumference {
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Returns the rolling radius, circumference / 2 pi: neither half the diameter nor the height of the hub over the ground.
     *
     * @return the radius at which the wheel's turning makes its road speed
     */
    public Length radius() {
        return circumference.dividedBy(2.0 * Math.PI);
    }

    /**
     * Returns how often the wheel turns along a distance.
     *
     * @return the reciprocal of the circumference
     */
    public RevolutionsPerDistance revolutions() {
        return RevolutionsPerDistance.ofPerMeter(1.0 / circumference.toMeters());
    }

    /**
     * Explains the circumference and the radius.
     *
     * @return inputs, formulas and sources
     */
    public Working working() {
        return TireWorkings.of(this);
    }
}
