package drivetrain.gearing;

import java.util.Optional;

/**
 * An auxiliary unit between transmission and transfer case: an overdrive (ratio below 1) or an underdrive (above 1), which can be engaged
 * or not. Disengaged it turns as one.
 *
 * @param name the name in a catalog, or the literal itself; {@code none} for the absent part
 * @param ratio turns in for one turn out when engaged, 0.5 to 5, other than 1
 * @param efficiency the efficiency when engaged, where known; else the default is taken and flagged
 */
public record Overdrive(String name, Ratio ratio, Optional<Efficiency> efficiency) {

    private static final String ALLOWED = "a ratio such as 0.78, efficiency PERCENT; or none";
    private static final Overdrive NONE = new Overdrive(PartName.NONE, Ratio.of(1.0), Optional.of(Efficiency.of(1.0)));

    /**
     * Checks the ratio.
     *
     * @throws drivetrain.refusal.RefusedException if it is out of range, or is 1 and the part is not {@code none}
     */
    public Overdrive {
        RatioLimits.AUXILIARY.require(ratio);
        PartName.requireNoneIffOne("overdrive", name, ratio);
    }

    /**
     * Returns the absence of the part.
     *
     * @return a ratio of 1 without loss
     */
    public static Overdrive none() {
        return NONE;
    }

    /**
     * Makes a part named by its ratio, its efficiency not known.
     *
     * @param ratio the ratio
     * @return the part
     * @throws drivetrain.refusal.RefusedException if the ratio is out of range or 1
     */
    public static Overdrive of(Ratio ratio) {
        return new Overdrive(ratio.text(), ratio, Optional.empty());
    }

    /**
     * Reads {@code 0.78 [efficiency 97 %]} or {@code none}.
     *
     * @param text the text
     * @return the part, named by its canonical text
     * @throws drivetrain.refusal.RefusedException if the text is something else, with the index of the fault
     */
    public static Overdrive parse(String text) {
        Literal literal = Literal.of("overdrive", text, ALLOWED, PartName.KEYWORDS);
        if (literal.takes(PartName.NONE)) {
            literal.requireEnd();
            return NONE;
        }
        Ratio ratio = RatioText.take(literal, RatioLimits.AUXILIARY);
        Optional<Efficiency> efficiency = PartName.takeEfficiency(literal);
        literal.requireEnd();
        PartName.requireNotOne(literal, ratio);
        return new Overdrive(ratio.text() + PartName.efficiencyWords(efficiency), ratio, efficiency);
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
