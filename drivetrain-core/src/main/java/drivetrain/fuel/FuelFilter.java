package drivetrain.fuel;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.VolumeFlow;
import drivetrain.refusal.Refusal;
import java.util.List;

/**
 * A filter, by one measured loss of pressure; the loss of the fine medium rises in proportion to the flow.
 *
 * @param name the name in a catalog, or the literal text
 * @param loss the loss when clean, 0 to 2 bar
 * @param flow the flow at which it was measured, 1 to 2000 L/h
 */
public record FuelFilter(String name, Pressure loss, VolumeFlow flow) {

    /** What every filter's loss rests on. */
    static final Assumption PROPORTIONAL = Assumption.flagged(
            "filter",
            "the filter is clean and its loss is in proportion to the flow; a loaded filter costs several times more",
            Source.derived("laminar flow through a fine medium, Darcy's law"));

    private static final Pressure NO_LOSS = Pressure.ofPascals(0.0);
    private static final Pressure MOST_LOSS = Pressure.ofBar(2.0);
    private static final VolumeFlow LEAST_FLOW = VolumeFlow.ofLitersPerHour(1.0);
    private static final String ALLOWED = "a loss at a flow, such as filter 8 kPa at 200 L/h";

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public FuelFilter {
        if (name.isBlank()) {
            throw Refusal.of("fuel filter", name, "has no name").asException();
        }
        loss.requireBetween("loss of the filter", NO_LOSS, MOST_LOSS, Pressure.BAR);
        flow.requireBetween("flow of the filter", LEAST_FLOW, PumpPoint.MOST_FLOW, VolumeFlow.LITER_PER_HOUR);
    }

    /**
     * Reads a filter from its literal text, {@code 8 kPa at 200 L/h}.
     *
     * @param text the text
     * @return the filter, named by the text
     * @throws drivetrain.refusal.RefusedException if the text cannot be read, with the index of the fault
     */
    public static FuelFilter parse(String text) {
        FuelWords words = FuelWords.of("fuel filter", text, ALLOWED, List.of("filter", "at"));
        words.takes("filter");
        FuelFilter filter = read(words, text.strip());
        if (words.nextClause()) {
            throw words.notUnderstood();
        }
        return filter;
    }

    static FuelFilter read(FuelWords words, String name) {
        int start = words.position();
        Pressure loss = words.take(Pressure.KIND, "loss of the filter", NO_LOSS, MOST_LOSS);
        if (!words.takes("at")) {
            throw words.refusal("says not at which flow the filter loses this", words.position());
        }
        VolumeFlow flow = words.take(VolumeFlow.KIND, "flow of the filter", LEAST_FLOW, PumpPoint.MOST_FLOW);
        return words.located(start, () -> new FuelFilter(name, loss, flow));
    }

    /**
     * Returns the loss at a flow.
     *
     * @param through the flow
     * @return the loss when clean
     */
    public Pressure lossAt(VolumeFlow through) {
        return loss.times(through.ratioTo(flow));
    }
}
