package drivetrain.gearing;

import drivetrain.finding.Assumption;
import java.util.Optional;

/**
 * The final drive of one axle: ring gear and pinion.
 *
 * @param name the name in a catalog, or the literal itself
 * @param ratio turns of the pinion for one turn of the ring gear, 1.5 to 12
 * @param efficiency the efficiency of the axle, where known; else the default of a hypoid axle is taken and flagged
 */
public record AxleRatio(String name, Ratio ratio, Optional<Efficiency> efficiency) {

    private static final String ALLOWED =
            "driven/driving teeth such as 41/10, or a decimal such as 4.10, efficiency PERCENT";

    /**
     * Checks the ratio.
     *
     * @throws drivetrain.refusal.RefusedException if it is out of range
     */
    public AxleRatio {
        RatioLimits.AXLE.require(ratio);
    }

    /**
     * Makes an axle named by its ratio, its efficiency not known.
     *
     * @param ratio the ratio
     * @return the axle
     * @throws drivetrain.refusal.RefusedException if the ratio is out of range
     */
    public static AxleRatio of(Ratio ratio) {
        return new AxleRatio(ratio.text(), ratio, Optional.empty());
    }

    /**
     * Reads {@code 41/10 [efficiency 96 %]}.
     *
     * @param text the text; the ratio may also be a decimal
     * @return the axle, named by its canonical text
     * @throws drivetrain.refusal.RefusedException if the text is something else, with the index of the fault
     */
    public static AxleRatio parse(String text) {
        Literal literal = Literal.of("axle ratio", text, ALLOWED, PartName.KEYWORDS);
        Ratio ratio = RatioText.take(literal, RatioLimits.AXLE);
        Optional<Efficiency> efficiency = PartName.takeEfficiency(literal);
        literal.requireEnd();
        return new AxleRatio(ratio.text() + PartName.efficiencyWords(efficiency), ratio, efficiency);
    }

    /**
     * Writes the axle so that {@link #parse} reads the same one, but for its name.
     *
     * @return the canonical literal
     */
    public String text() {
        return ratio.text() + PartName.efficiencyWords(efficiency);
    }

    /**
     * Returns what a decimal ratio leaves open: it is the rounded quotient of a tooth pair that the trade knows.
     *
     * @return the assumption, or empty for a pair, for a decimal that is exact, and for one with no well known pair nearby
     */
    public Optional<Assumption> decimalAssumption() {
        return AxleToothPairs.assumption(ratio);
    }
}
