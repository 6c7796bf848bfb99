package drivetrain.gearing;

import java.util.Optional;

/**
 * A gear pair or planetary set in each wheel hub (portal or hub reduction axle), behind the half-shafts.
 *
 * @param name the name in a catalog, or the literal itself; {@code none} for the absent part
 * @param ratio turns of the half-shaft for one turn of the wheel, more than 1, up to 7
 * @param efficiency the efficiency of the hub, where known; else the default is taken and flagged
 */
public record HubReduction(String name, Ratio ratio, Optional<Efficiency> efficiency) {

    private static final String ALLOWED = "a ratio such as 24/16, efficiency PERCENT; or none";
    private static final HubReduction NONE =
            new HubReduction(PartName.NONE, Ratio.of(1.0), Optional.of(Efficiency.of(1.0)));

    /**
     * Checks the ratio.
     *
     * @throws drivetrain.refusal.RefusedException if it is out of range, or is 1 and the part is not {@code none}
     */
    public HubReduction {
        RatioLimits.HUB.require(ratio);
        PartName.requireNoneIffOne("hub reduction", name, ratio);
    }

    /**
     * Returns the absence of the part.
     *
     * @return a ratio of 1 without loss
     */
    public static HubReduction none() {
        return NONE;
    }

    /**
     * Makes a part named by its ratio, its efficiency not known.
     *
     * @param ratio the ratio
     * @return the part
     * @throws drivetrain.refusal.RefusedException if the ratio is out of range or 1
     */
    public static HubReduction of(Ratio ratio) {
        return new HubReduction(ratio.text(), ratio, Optional.empty());
    }

    /**
     * Reads {@code 24/16 [efficiency 97 %]} or {@code none}.
     *
     * @param text the text
     * @return the part, named by its canonical text
     * @throws drivetrain.refusal.RefusedException if the text is something else, with the index of the fault
     */
    public static HubReduction parse(String text) {
        Literal literal = Literal.of("hub reduction", text, ALLOWED, PartName.KEYWORDS);
        if (literal.takes(PartName.NONE)) {
            literal.requireEnd();
            return NONE;
        }
        Ratio ratio = RatioText.take(literal, RatioLimits.HUB);
        Optional<Efficiency> efficiency = PartName.takeEfficiency(literal);
        literal.requireEnd();
        PartName.requireNotOne(literal, ratio);
        return new HubReduction(ratio.text() + PartName.efficiencyWords(efficiency), ratio, efficiency);
    }

    /**
     * Tells whether the part is there at all.
     *
     * @return false for {@link #none()}
     */
    public boolean isFitted() {
        return !name.equals(PartName.NONE);
    }

    /**
     * Writes the part so that {@link #parse} reads the same one, but for its name.
     *
     * @return the canonical literal
     */
    public String text() {
        return isFitted() ? ratio.text() + PartName.efficiencyWords(efficiency) : PartName.NONE;
    }
}
