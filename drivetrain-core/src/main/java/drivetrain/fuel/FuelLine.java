package drivetrain.fuel;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The way of the fuel from the tank to the engine, or back.
 *
 * @param name the literal text, or the name in a catalog
 * @param suction the pieces ahead of the pump; empty if the pump hangs in the tank
 * @param feed the pieces behind the pump
 * @param pumpPlaced true if the text said where the pump sits
 */
public record FuelLine(String name, List<LinePiece> suction, List<LinePiece> feed, boolean pumpPlaced) {

    private static final Source ROUGHNESS = Source.handbook("White, Fluid Mechanics, table 6.1 (from memory)");

    /** Copies the lists. */
    public FuelLine {
        suction = List.copyOf(suction);
        feed = List.copyOf(feed);
    }

    /**
     * The shelves on which a line's text finds its pieces.
     *
     * @param hoses finds a tube or hose by its name
     * @param filters finds a filter by its name
     */
    public record Shelves(Function<String, Optional<Conduit>> hoses, Function<String, Optional<FuelFilter>> filters) {

        /**
         * Returns shelves without anything.
         *
         * @return empty shelves
         */
        public static Shelves none() {
            return new Shelves(name -> Optional.empty(), name -> Optional.empty());
        }
    }

    /**
     * Reads a line from its literal text: its pieces in the order of the flow with commas between them.
     *
     * <p>A piece is {@code 4.5 m of 8 mm tube} or {@code 4.5 m of NAME}, {@code 3 elbows} (bends, tees, check-valves), {@code filter 8 kPa at 200 L/h} or {@code filter NAME}, or
     * {@code pump} where the pump sits; without it the pump hangs in the tank. Fittings have the bore of the run ahead of them, or of the next one where there is none.
     *
     * @param text the text
     * @param shelves where names are found
     * @return the line, named by the text
     * @throws drivetrain.refusal.RefusedException if the text cannot be read, with the index of the fault
     */
    public static FuelLine parse(String text, Shelves shelves) {
        return new LineText(text, shelves).read();
    }

    /**
     * Returns what the pieces behind the pump cost.
     *
     * @param flow the flow through them
     * @param fuel the fuel as it flows
     * @return the loss
     */
    public Pressure feedLoss(VolumeFlow flow, FlowingFuel fuel) {
        return loss(feed, flow, fuel);
    }

    /**
     * Returns what the pieces ahead of the pump cost.
     *
     * @param flow the flow through them
     * @param fuel the fuel as it flows
     * @return the loss
     */
    public Pressure suctionLoss(VolumeFlow flow, FlowingFuel fuel) {
        return loss(suction, flow, fuel);
    }

    private static Pressure loss(List<LinePiece> pieces, VolumeFlow flow, FlowingFuel fuel) {
        Pressure total = Pressure.ofPascals(0.0);
        for (LinePiece piece : pieces) {
            total = total.plus(piece.loss(flow, fuel.density(), fuel.viscosity()));
        }
        return total;
    }

    /**
     * Returns the runs of the pieces behind the pump.
     *
     * @return the runs in the order of the flow
     */
    public List<LinePiece.Run> feedRuns() {
        return runs(feed);
    }

    /**
     * Returns the runs of the pieces ahead of the pump.
     *
     * @return the runs in the order of the flow
     */
    public List<LinePiece.Run> suctionRuns() {
        return runs(suction);
    }

    private static List<LinePiece.Run> runs(List<LinePiece> pieces) {
        return pieces.stream()
                .filter(LinePiece.Run.class::isInstance)
                .map(LinePiece.Run.class::cast)
                .toList();
    }

    /**
     * Returns the length of all runs.
     *
     * @return the length
     */
    public Length length() {
        Length total = Length.ofMeters(0.0);
        for (LinePiece.Run run : runs(suction)) {
            total = total.plus(run.length());
        }
        for (LinePiece.Run run : runs(feed)) {
            total = total.plus(run.length());
        }
        return total;
    }

    /**
     * Returns what the losses of the line rest on.
     *
     * @param flow the flow through it
     * @param fuel the fuel as it flows
     * @return the assumptions
     */
    public List<Assumption> assumptions(VolumeFlow flow, FlowingFuel fuel) {
        List<Assumption> all = new ArrayList<>();
        List<LinePiece> pieces = new ArrayList<>(suction);
        pieces.addAll(feed);
        all.add(Assumption.of(
                "roughness of the line", "tubes are rough by 0.0015 mm (drawn), hoses by 0.01 mm", ROUGHNESS));
        if (!pumpPlaced) {
            all.add(Assumption.of(
                    "place of the pump",
                    "the pump hangs in the tank, because the feed line does not say \"pump\"",
                    Source.given("the order's feed line")));
        }
        if (pieces.stream().anyMatch(LinePiece.Filtered.class::isInstance)) {
            all.add(FuelFilter.PROPORTIONAL);
        }
        if (pieces.stream().anyMatch(LinePiece.Fittings.class::isInstance)) {
            all.add(Assumption.of(
                    "fittings",
                    "an elbow costs " + coefficient(FittingKind.ELBOW) + ", a bend " + coefficient(FittingKind.BEND)
                            + ", a tee " + coefficient(FittingKind.TEE) + ", a check valve "
                            + coefficient(FittingKind.CHECK_VALVE) + " dynamic pressures",
                    FuelConstant.of("elbow-loss").source()));
        }
        for (LinePiece.Run run : runs(pieces)) {
            double reynolds = PipeFlow.reynolds(
                    PipeFlow.speed(flow, run.conduit().bore()), run.conduit().bore(), fuel.viscosity());
            if (PipeFlow.isUncertain(reynolds)) {
                all.add(Assumption.flagged(
                        "flow between laminar and turbulent",
                        "in the " + run.conduit().name() + " the flow is neither laminar nor turbulent (Re "
                                + DecimalText.fixed(reynolds, 0) + "); its friction is uncertain",
                        PipeFlow.SOURCE));
            }
        }
        return List.copyOf(all);
    }

    private static String coefficient(FittingKind kind) {
        return DecimalText.shortest(kind.lossCoefficient());
    }
}
