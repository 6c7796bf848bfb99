package drivetrain.tire;

import drivetrain.finding.Assumption;
import drivetrain.finding.Working;
import drivetrain.quantity.Length;
import java.util.List;

/**
 * The overall diameter of a new tire, inflated and not loaded.
 *
 * @param diameter the diameter
 * @param basis what it rests on
 * @param designation the size that it belongs to
 * @param assumptions what was not measured on this tire
 */
public record OverallDiameter(
        Length diameter, DiameterBasis basis, TireDesignation designation, List<Assumption> assumptions) {

    /** Copies the list. */
    public OverallDiameter {
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Explains the diameter.
     *
     * @return inputs, formula and sources
     */
    public Working working() {
        return TireWorkings.of(this);
    }
}
