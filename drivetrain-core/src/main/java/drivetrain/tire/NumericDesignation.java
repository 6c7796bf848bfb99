package drivetrain.tire;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Length;
import java.util.List;

/**
 * A numeric size: {@code 7.50R16}, {@code 7.50-16}, {@code 6.50R16C}. It tells no diameter.
 *
 * @param sectionWidth nominal section width in inches, 2.5 to 18, at most two decimals
 * @param construction how the carcass is built
 * @param rimCode nominal rim diameter in inches, 8 to 30 in halves
 * @param markings use, load range and service description; the use is never {@code P}
 */
public record NumericDesignation(double sectionWidth, Construction construction, double rimCode, Markings markings)
        implements TireDesignation {

    /**
     * Checks every part.
     *
     * @throws drivetrain.refusal.RefusedException if a part is out of range or the use does not go with the size
     */
    public NumericDesignation {
        SizeRange.NUMERIC_WIDTH.require(sectionWidth);
        SizeRange.RIM.require(rimCode);
        SizeRange.refusePassenger(markings);
    }

    @Override
    public Length rimDiameter() {
        return Length.ofInches(rimCode);
    }

    @Override
    public String size() {
        return bareSize() + markings.suffix(false);
    }

    private String bareSize() {
        return SizeText.hundredths(sectionWidth) + construction.mark() + SizeText.number(rimCode);
    }

    @Override
    public Outcome<OverallDiameter> overallDiameter() {
        List<String> keys = markings.is(TireUse.COMMERCIAL) ? List.of(size(), bareSize()) : List.of(size());
        return SizeDiameters.of(
                this, keys, "is a numeric size, which tells no diameter, and the table of sizes has no row for it");
    }
}
