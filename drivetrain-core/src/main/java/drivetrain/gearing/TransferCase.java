package drivetrain.gearing;

import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;

/**
 * A transfer case: its ranges and how it ties the axles together.
 *
 * @param name the name in a catalog, or the literal itself
 * @param high the ratio of high range
 * @param low the ratio of low range, greater than high, where there is one
 * @param tie how the front axle is tied to the rear one
 * @param efficiency the efficiency in either range, where known; else the default of each range is taken and flagged
 */
public record TransferCase(String name, Ratio high, Optional<Ratio> low, AxleTie tie, Optional<Efficiency> efficiency) {

    private static final String ALLOWED =
            "the ratio of high range, the ratio of low range, part-time, open, locked or rear-only, efficiency PERCENT; or none";
    private static final List<String> KEYWORDS =
            List.of("part-time", "open", "locked", "rear-only", "efficiency", PartName.NONE);
    private static final TransferCase NONE = new TransferCase(
            PartName.NONE, Ratio.of(1.0), Optional.empty(), AxleTie.REAR_ONLY, Optional.of(Efficiency.of(1.0)));

    /**
     * Checks the ratios.
     *
     * @throws drivetrain.refusal.RefusedException if a ratio is out of range or low range does not reduce more than high
     */
    public TransferCase {
        RatioLimits.RANGE.require(high);
        low.ifPresent(RatioLimits.RANGE::require);
        if (low.isPresent() && low.get().value() <= high.value()) {
            throw Refusal.of("transfer case", low.get().text(), notAbove(high))
                    .allowing("high range first, then low range")
                    .asException();
        }
    }

    /**
     * Returns the absence of a transfer case.
     *
     * @return straight through without loss, rear axle only
     */
    public static TransferCase none() {
        return NONE;
    }

    /**
     * Reads a transfer case that is written out: {@code 1.00 2.72 [part-time | open | locked | rear-only] [efficiency 97 %]}, or {@code none}.
     * Without a word for it, the front axle is part-time; {@link #text()} always says which.
     *
     * @param text the text
     * @return the transfer case, named by its canonical text
     * @throws drivetrain.refusal.RefusedException if the text is something else, with the index of the fault
     */
    public static TransferCase parse(String text) {
        Literal literal = Literal.of("transfer case", text, ALLOWED, KEYWORDS);
        if (literal.takes(PartName.NONE)) {
            literal.requireEnd();
            return NONE;
        }
        Ratio high = RatioText.take(literal, RatioLimits.RANGE);
        Optional<Ratio> low = Optional.empty();
        if (literal.atNumber()) {
            int position = literal.position();
            low = Optional.of(RatioText.take(literal, RatioLimits.RANGE));
            if (low.get().value() <= high.value()) {
                throw literal.refusal("the ratio of low range " + notAbove(high), position);
            }
        }
        AxleTie tie = AxleTie.PART_TIME;
        for (AxleTie known : AxleTie.values()) {
            if (literal.takes(known.label())) {
                tie = known;
                break;
            }
        }
        Optional<Efficiency> efficiency = PartName.takeEfficiency(literal);
        literal.requireEnd();
        TransferCase unnamed = new TransferCase("", high, low, tie, efficiency);
        return new TransferCase(unnamed.text(), high, low, tie, efficiency);
    }

    /**
     * Tells whether there is a transfer case at all.
     *
     * @return false for {@link #none()}
     */
    public boolean isFitted() {
        return !name.equals(PartName.NONE);
    }

    /**
     * Writes the transfer case so that {@link #parse} reads the same one, but for its name.
     *
     * @return the canonical literal
     */
    public String text() {
        if (!isFitted()) {
            return PartName.NONE;
        }
        return high.text() + low.map(ratio -> " " + ratio.text()).orElse("") + " " + tie.label()
                + PartName.efficiencyWords(efficiency);
    }

    private static String notAbove(Ratio high) {
        return "is not above that of high range, " + high.text();
    }
}
