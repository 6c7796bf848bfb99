package drivetrain.gearing;

import drivetrain.quantity.Torque;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A transmission: its forward gears from first to top, reverse, and what joins it to the engine.
 *
 * @param name the name in a catalog, or the literal itself
 * @param forward the forward ratios, first gear first, each smaller than the one before; 1 to 18 of them
 * @param reverse the reverse ratio without a sign, where known
 * @param coupling clutch or converter
 * @param efficiency the efficiency of the whole box, where known; else the default of each gear is taken and flagged
 * @param inputRating the greatest torque that its maker allows at its input, behind a converter at stall, where known
 * @param outputRating the greatest torque that its maker allows at its output, where known
 */
public record Transmission(
        String name,
        List<Ratio> forward,
        Optional<Ratio> reverse,
        Coupling coupling,
        Optional<Efficiency> efficiency,
        Optional<Torque> inputRating,
        Optional<Torque> outputRating) {

    static final int MOST_GEARS = 18;

    /**
     * Checks the gears.
     *
     * @throws drivetrain.refusal.RefusedException if there is no gear, a ratio is out of range, the ratios do not fall from gear to gear,
     *     or the rating is not greater than zero
     */
    public Transmission {
        forward = List.copyOf(forward);
        if (forward.isEmpty() || forward.size() > MOST_GEARS) {
            throw Refusal.of("transmission", name, "has " + forward.size() + " forward gears")
                    .allowing("1 to " + MOST_GEARS + " forward gears")
                    .asException();
        }
        forward.forEach(RatioLimits.GEAR::require);
        reverse.ifPresent(RatioLimits.GEAR::require);
        inputRating = inputRating.map(torque -> torque.requirePositive("input rating"));
        outputRating = outputRating.map(torque -> torque.requirePositive("output rating"));
        OptionalInt fault = firstOutOfOrder(forward);
        if (fault.isPresent()) {
            throw Refusal.of(
                            "transmission", forward.get(fault.getAsInt()).text(), outOfOrder(forward, fault.getAsInt()))
                    .allowing("forward ratios from first gear to top, each smaller than the one before")
                    .asException();
        }
    }

    /**
     * Makes a transmission whose ratings are not known.
     *
     * @param name the name in a catalog, or the literal itself
     * @param forward the forward ratios, first gear first
     * @param reverse the reverse ratio without a sign, where known
     * @param coupling clutch or converter
     * @param efficiency the efficiency of the whole box, where known
     * @throws drivetrain.refusal.RefusedException if the gears are refused
     */
    public Transmission(
            String name,
            List<Ratio> forward,
            Optional<Ratio> reverse,
            Coupling coupling,
            Optional<Efficiency> efficiency) {
        this(name, forward, reverse, coupling, efficiency, Optional.empty(), Optional.empty());
    }

    /**
     * Reads a transmission that is written out: the forward ratios from first gear to top, then in any order {@code reverse 3.06},
     * {@code clutch [clutch-rating 450 lb-ft]} or {@code converter [stall 2.0] [stall-speed 2200 rpm] [curve 0:2:150 0.5:1.5:160 0.95:1:250] [lockup | no lockup]
     * [slip 3 % | speed-ratio 0.97]}, {@code efficiency 96 %}, {@code rating 650 lb-ft} at its input, {@code output-rating 1900 lb-ft}. A curve is read as speed ratio : torque ratio : capacity factor in
     * rpm/sqrt(lb-ft). Without a
     * word for it, the coupling is taken for a clutch, which the answers then say, and a converter has no lock-up, which {@link #text()} says.
     *
     * @param text the text, such as {@code 4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06 converter lockup}
     * @return the transmission, named by its canonical text
     * @throws drivetrain.refusal.RefusedException if the text is something else, with the index of the fault
     */
    public static Transmission parse(String text) {
        return TransmissionText.parse(text);
    }

    /**
     * Writes the transmission so that {@link #parse} reads the same one, but for its name.
     *
     * @return the canonical literal
     */
    public String text() {
        return TransmissionText.text(this);
    }

    /**
     * Returns the ratio coverage, first gear over top gear.
     *
     * @return a number, 1 for a single gear
     */
    public double spread() {
        return forward.get(0).value() / forward.get(forward.size() - 1).value();
    }

    /** Returns the index of the first ratio that is not below the one before it. */
    static OptionalInt firstOutOfOrder(List<Ratio> ratios) {
        for (int i = 1; i < ratios.size(); i++) {
            if (ratios.get(i).value() >= ratios.get(i - 1).value()) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    static String outOfOrder(List<Ratio> ratios, int index) {
        return "the ratio of " + GearLabel.ordinal(index + 1) + " gear, "
                + ratios.get(index).text() + ", is not below that of " + GearLabel.ordinal(index) + ", "
                + ratios.get(index - 1).text();
    }
}
