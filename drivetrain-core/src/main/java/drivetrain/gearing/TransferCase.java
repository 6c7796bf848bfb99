package drivetrain.gearing;

import drivetrain.quantity.Torque;
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
 * @param inputRating the greatest torque that its maker allows at its input, where known
 * @param outputRating the greatest torque that its maker allows at one output, where known
 */
public record TransferCase(
        String name,
        Ratio high,
        Optional<Ratio> low,
        AxleTie tie,
        Optional<Efficiency> efficiency,
        Optional<Torque> inputRating,
        Optional<Torque> outputRating) {

    private static final String ALLOWED =
            "the ratio of high range, the ratio of low range, part-time, open, locked or rear-only, efficiency PERCENT, rating TORQUE, output-rating TORQUE; or none";
    private static final List<String> KEYWORDS =
            List.of("part-time", "open", "locked", "rear-only", "efficiency", "rating", "output-rating", PartName.NONE);
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
        inputRating = inputRating.map(torque -> torque.requirePositive("input rating"));
        outputRating = outputRating.map(torque -> torque.requirePositive("output rating"));
        if (low.isPresent() && low.get().value() <= high.value()) {
            throw Refusal.of("transfer case", low.get().text(), notAbove(high))
                    .allowing("high range first, then low range")
                    .asException();
        }
    }

    /**
     * Makes a transfer case whose ratings are not known.
     *
     * @param name the name in a catalog, or the literal itself
     * @param high the ratio of high range
     * @param low the ratio of low range, where there is one
     * @param tie how the front axle is tied to the rear one
     * @param efficiency the efficiency in either range, where known
     * @throws drivetrain.refusal.RefusedException if the ratios are refused
     */
    public TransferCase(String name, Ratio high, Optional<Ratio> low, AxleTie tie, Optional<Efficiency> efficiency) {
        this(name, high, low, tie, efficiency, Optional.empty(), Optional.empty());
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
     * Reads a transfer case that is written out: {@code 1.00 2.72 [part-time | open | locked | rear-only] [efficiency 97 %] [rating 1500 lb-ft] [output-rating 4000
     * lb-ft]}, or {@code none}.
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
        Optional<Torque> input = PartName.takeTorque(literal, "rating");
        Optional<Torque> output = PartName.takeTorque(literal, "output-rating");
        literal.requireEnd();
        TransferCase unnamed = new TransferCase("", high, low, tie, efficiency, input, output);
        return new TransferCase(unnamed.text(), high, low, tie, efficiency, input, output);
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
                + PartName.efficiencyWords(efficiency) + PartName.torqueWords("rating", inputRating)
                + PartName.torqueWords("output-rating", outputRating);
    }

    private static String notAbove(Ratio high) {
        return "is not above that of high range, " + high.text();
    }
}
