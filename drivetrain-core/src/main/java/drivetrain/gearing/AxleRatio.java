package drivetrain.gearing;

import drivetrain.finding.Assumption;
import java.util.List;
import java.util.Optional;

/**
 * The final drive of one axle: ring gear and pinion.
 *
 * @param name the name in a catalog, or the literal itself
 * @param ratio turns of the pinion for one turn of the ring gear, 1.5 to 12
 * @param efficiency the efficiency of the axle, where known; else the default of a hypoid axle is taken and flagged
 * @param ratings the torques that its parts may carry, where known
 */
public record AxleRatio(String name, Ratio ratio, Optional<Efficiency> efficiency, AxleRatings ratings) {

    private static final String ALLOWED =
            "driven/driving teeth such as 41/10, or a decimal such as 4.10, efficiency PERCENT, ring-rating TORQUE, "
                    + "shaft-rating TORQUE, joint-rating TORQUE";
    private static final List<String> KEYWORDS =
            List.of("efficiency", AxleRatings.RING, AxleRatings.SHAFT, AxleRatings.JOINT);

    /**
     * Checks the ratio.
     *
     * @throws drivetrain.refusal.RefusedException if it is out of range
     */
    public AxleRatio {
        RatioLimits.AXLE.require(ratio);
    }

    /**
     * Makes an axle whose ratings are not known.
     *
     * @param name the name in a catalog, or the literal itself
     * @param ratio turns of the pinion for one turn of the ring gear
     * @param efficiency the efficiency of the axle, where known
     * @throws drivetrain.refusal.RefusedException if the ratio is out of range
     */
    public AxleRatio(String name, Ratio ratio, Optional<Efficiency> efficiency) {
        this(name, ratio, efficiency, AxleRatings.unknown());
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
     * Reads {@code 41/10 [efficiency 96 %] [ring-rating 5500 lb-ft] [shaft-rating 3000 lb-ft] [joint-rating 2500 lb-ft]}.
     *
     * @param text the text; the ratio may also be a decimal
     * @return the axle, named by its canonical text
     * @throws drivetrain.refusal.RefusedException if the text is something else, with the index of the fault
     */
    public static AxleRatio parse(String text) {
        Literal literal = Literal.of("axle ratio", text, ALLOWED, KEYWORDS);
        Ratio ratio = RatioText.take(literal, RatioLimits.AXLE);
        Optional<Efficiency> efficiency = PartName.takeEfficiency(literal);
        AxleRatings ratings = AxleRatings.take(literal);
        literal.requireEnd();
        AxleRatio unnamed = new AxleRatio("", ratio, efficiency, ratings);
        return new AxleRatio(unnamed.text(), ratio, efficiency, ratings);
    }

    /**
     * Writes the axle so that {@link #parse} reads the same one, but for its name.
     *
     * @return the canonical literal
     */
    public String text() {
        return ratio.text() + PartName.efficiencyWords(efficiency) + ratings.words();
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
