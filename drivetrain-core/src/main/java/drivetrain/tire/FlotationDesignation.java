package drivetrain.tire;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import java.util.List;

/**
 * A high flotation size: {@code 35x12.50R17LT}. Its first number is a nominal diameter; the design diameter is some half inch less.
 *
 * @param nominalDiameter nominal overall diameter in inches, 20 to 60, at most two decimals
 * @param sectionWidth nominal section width in inches, 4 to 25, at most two decimals
 * @param construction how the carcass is built
 * @param rimCode nominal rim diameter in inches, 8 to 30 in halves, at least 4 in less than the nominal diameter
 * @param markings use, load range and service description; the use is never {@code P}
 */
public record FlotationDesignation(
        double nominalDiameter, double sectionWidth, Construction construction, double rimCode, Markings markings)
        implements TireDesignation {

    /** What the design diameter is less than the nominal one: half an inch, 12.7 mm (from memory). */
    static final Length NOMINAL_EXCESS = Length.ofInches(0.5);

    static final Assumption NOMINAL = Assumption.flagged(
            "overall diameter",
            "the first number of a flotation size is a nominal diameter; the design diameter is taken as 12.7 mm (0.5 in) less",
            Source.fromMemory(
                    "Tire and Rim Association year book, flotation sizes, as carried in UN Regulation 54 annex 5"));

    private static final double LEAST_HEIGHTS = 4.0;

    /**
     * Checks every part.
     *
     * @throws drivetrain.refusal.RefusedException if a part is out of range or the use does not go with the size
     */
    public FlotationDesignation {
        SizeRange.FLOTATION_DIAMETER.require(nominalDiameter);
        SizeRange.FLOTATION_WIDTH.require(sectionWidth);
        SizeRange.RIM.require(rimCode);
        SizeRange.refusePassenger(markings);
        if (!leavesRoom(nominalDiameter, rimCode)) {
            throw Refusal.of(SizeRange.RIM.subject(), SizeText.number(rimCode), "leaves no room for the tire")
                    .allowing("at most " + SizeText.number(nominalDiameter - LEAST_HEIGHTS)
                            + " in for a nominal diameter of " + SizeText.number(nominalDiameter) + " in")
                    .asException();
        }
    }

    static boolean leavesRoom(double nominalDiameter, double rimCode) {
        return nominalDiameter >= rimCode + LEAST_HEIGHTS;
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
        return SizeText.number(nominalDiameter) + "x" + SizeText.hundredths(sectionWidth) + construction.mark()
                + SizeText.number(rimCode);
    }

    @Override
    public Outcome<OverallDiameter> overallDiameter() {
        return SizeDiameters.find(this, List.of(bareSize()))
                .map(Outcome::of)
                .orElseGet(() -> Outcome.of(new OverallDiameter(
                        Length.ofInches(nominalDiameter).minus(NOMINAL_EXCESS),
                        DiameterBasis.NOMINAL_LESS_HALF_INCH,
                        this,
                        List.of(NOMINAL))));
    }
}
