package drivetrain.fuel;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * A pump, its wires, its lines and its regulator together.
 *
 * <p>The pump adds what the regulator holds, the losses of the lines at the flow that they carry, and the lift. In a return system the feed line carries all that the pump moves; in a returnless one the
 * regulator sits at the tank and the line carries what the engine burns. Where pump curve and system curve meet is solved by Brent's method in the pressure that the pump adds, within what was measured.
 *
 * @param pump the pump
 * @param line the way from the tank to the rail
 * @param regulator the regulator
 * @param fuel the fuel at its temperature
 * @param lift how far the rail lies above the fuel in the tank
 * @param boost the pressure in the manifold above the air outside
 * @param voltage the voltage of the supply
 * @param wire the wires to the pump; empty if the voltage is that at the pump
 */
public record FuelSupply(
        Pump pump,
        FuelLine line,
        Regulator regulator,
        FlowingFuel fuel,
        Length lift,
        Pressure boost,
        Voltage voltage,
        Optional<Wire> wire) {

    /** Standard acceleration of free fall, 9.806 65 m/s2 exactly. */
    static final double GRAVITY = 9.80665;

    /** The accuracy to which a pressure is solved, in pascals; a millionth of a bar. */
    private static final double ACCURACY_PASCALS = 0.1;

    /** How far inside the measured pressures the ends are tried, so that no rounding of the voltage puts them outside. */
    private static final double END = 1e-9;

    private static final int MOST_EVALUATIONS = 200;

    private static final Source MEASURED = Source.derived("nothing is extrapolated beyond a measured pump curve");

    /** Returns what the lift costs. */
    Pressure liftPressure() {
        return lifted(fuel, lift);
    }

    /**
     * Returns the pressure that the regulator holds above the air outside.
     *
     * @return the gauge pressure where it sits
     */
    public Pressure held() {
        return regulator.held(boost);
    }

    private ElectricFeed feed() {
        return new ElectricFeed(pump, voltage, wire);
    }

    private boolean isReturn() {
        return regulator.layout() == Regulator.Layout.RETURN;
    }

    /**
     * Returns the most that the supply delivers while the regulator holds its pressure.
     *
     * @return the supply at that flow; not evaluated beyond what the pump was measured for
     */
    public Outcome<SupplyPoint> capacity() {
        return meet(this::needed).then(added -> pumpFlow(added).then(flow -> pointAt(added, flow, flow)));
    }

    /**
     * Returns the most that the pump would deliver if the lines cost nothing.
     *
     * @return the flow; not evaluated beyond what the pump was measured for
     */
    public Outcome<VolumeFlow> pumpAlone() {
        Pressure constant = isReturn() ? held().plus(liftPressure()) : held();
        return meet(flow -> constant).then(this::pumpFlow);
    }

    /**
     * Returns the supply while the engine burns a flow. Up to {@link #capacity} the regulator holds its pressure; above it the pressure in the rail falls to what the pump can still add at that flow.
     *
     * @param burned the flow that the engine burns
     * @return the supply; not evaluated beyond what the pump was measured for
     */
    public Outcome<SupplyPoint> at(VolumeFlow burned) {
        return at(burned, capacity());
    }

    /**
     * Returns the supply while the engine burns a flow, where its capacity is known already.
     *
     * @param burned the flow that the engine burns
     * @param capacity what {@link #capacity} returns
     * @return the supply; not evaluated beyond what the pump was measured for
     */
    public Outcome<SupplyPoint> at(VolumeFlow burned, Outcome<SupplyPoint> capacity) {
        return capacity.then(most -> {
            if (!burned.isGreaterThan(most.flow())) {
                return pointAt(most.added(), most.flow(), isReturn() ? most.flow() : burned);
            }
            return pressureAt(burned).then(added -> pointAt(added, burned, burned));
        });
    }

    /**
     * Returns what the pump has to add at a flow so that the regulator holds.
     *
     * @param flow the flow through the pump
     * @return what the regulator holds, with losses and lift as the layout has them
     */
    public Pressure needed(VolumeFlow flow) {
        return needed(line, regulator, fuel, lift, boost, flow);
    }

    /**
     * Returns what any pump would have to add at a flow so that the regulator holds.
     *
     * @param line the way from the tank to the rail
     * @param regulator the regulator
     * @param fuel the fuel at its temperature
     * @param lift how far the rail lies above the fuel in the tank
     * @param boost the pressure in the manifold above the air outside
     * @param flow the flow through the pump
     * @return what the regulator holds, with losses and lift as the layout has them
     */
    public static Pressure needed(
            FuelLine line, Regulator regulator, FlowingFuel fuel, Length lift, Pressure boost, VolumeFlow flow) {
        Pressure needed = regulator.held(boost).plus(line.suctionLoss(flow, fuel));
        return regulator.layout() == Regulator.Layout.RETURN
                ? needed.plus(line.feedLoss(flow, fuel)).plus(lifted(fuel, lift))
                : needed;
    }

    private static Pressure lifted(FlowingFuel fuel, Length lift) {
        return Pressure.ofPascals(fuel.density().toKilogramsPerCubicMeter() * GRAVITY * lift.toMeters());
    }

    /** The pressure in the rail: what the regulator holds or the pump adds, less the way there. */
    private Outcome<SupplyPoint> pointAt(Pressure added, VolumeFlow flow, VolumeFlow lineFlow) {
        Pressure suction = line.suctionLoss(flow, fuel);
        Pressure feed = line.feedLoss(lineFlow, fuel);
        Pressure behindPump = added.minus(suction);
        Pressure start = isReturn() || behindPump.isLessThan(held()) ? behindPump : held();
        Pressure rail = start.minus(feed).minus(liftPressure());
        return feed().voltageAt(added)
                .map(volts -> new SupplyPoint(
                        flow,
                        lineFlow,
                        added,
                        rail,
                        feed,
                        suction,
                        liftPressure(),
                        volts,
                        pump.currentAt(added, volts).value()));
    }

    /** The flow of the pump at a pressure, with the voltage that the wires leave. */
    private Outcome<VolumeFlow> pumpFlow(Pressure added) {
        return feed().voltageAt(added).then(volts -> pump.flowAt(added, volts));
    }

    /** The pressure at which the pump's flow asks for just this pressure of the system. */
    private Outcome<Pressure> meet(Function<VolumeFlow, Pressure> system) {
        return solve(
                added -> system.apply(flowOrThrow(added)).minus(added).si(),
                low -> "the pump was measured from " + low.format(Pressure.PSI, 1)
                        + " up, and here it would run below that",
                high -> "the pump was measured up to " + high.format(Pressure.PSI, 1)
                        + " at this voltage, and here it would have to add more");
    }

    /** The pressure that the pump adds at a flow. */
    private Outcome<Pressure> pressureAt(VolumeFlow flow) {
        return solve(
                added -> flowOrThrow(added).minus(flow).si(),
                low -> "the pump was measured from " + low.format(Pressure.PSI, 1) + " up, where it flows "
                        + flowOrThrow(low).format(VolumeFlow.LITER_PER_HOUR, 0) + ", and the engine would burn more",
                high -> "the pump was not measured at so small a flow");
    }

    /** The pump's curve at the voltage that its wires leave, from its lowest to its highest measured pressure. */
    Outcome<List<SupplyCurves.Point>> pumpPoints(int steps) {
        ElectricFeed feed = feed();
        return measured(() ->
                feed.lowestEnd().then(low -> feed.highestEnd().map(high -> pumpPoints(low, high, steps))));
    }

    private List<SupplyCurves.Point> pumpPoints(ElectricFeed.End lowest, ElectricFeed.End highest, int steps) {
        Pressure low = lowest.pressure().times(1.0 + END);
        Pressure high = highest.pressure().times(1.0 - END);
        List<SupplyCurves.Point> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            Pressure added = low.plus(high.minus(low).times((double) i / steps));
            points.add(new SupplyCurves.Point(flowOrThrow(added), added));
        }
        return points;
    }

    /** Leaves a solution on its way: the pump was not measured at a pressure or a voltage that it came to. */
    private static final class NotMeasured extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NotMeasured(String reason) {
            super(reason, null, false, false);
        }
    }

    private VolumeFlow flowOrThrow(Pressure added) {
        return pumpFlow(added).fold(flow -> flow, reason -> {
            throw new NotMeasured(reason);
        });
    }

    private static <T> Outcome<T> measured(Supplier<Outcome<T>> solution) {
        try {
            return solution.get();
        } catch (NotMeasured e) {
            return Outcome.notEvaluated(String.valueOf(e.getMessage()));
        }
    }

    /** Solves for the pressure at which an excess that falls with the pressure is zero, between the ends of what was measured. */
    private Outcome<Pressure> solve(
            Function<Pressure, Double> excess, Function<Pressure, String> below, Function<Pressure, String> above) {
        ElectricFeed feed = feed();
        return measured(() ->
                feed.lowestEnd().then(low -> feed.highestEnd().then(high -> solve(low, high, excess, below, above))));
    }

    private Outcome<Pressure> solve(
            ElectricFeed.End lowest,
            ElectricFeed.End highest,
            Function<Pressure, Double> excess,
            Function<Pressure, String> below,
            Function<Pressure, String> above) {
        Pressure low = lowest.pressure().times(1.0 + END);
        Pressure high = highest.pressure().times(1.0 - END);
        if (excess.apply(low) < 0.0) {
            return Outcome.notEvaluated(below.apply(low));
        }
        if (excess.apply(high) > 0.0) {
            boolean ends = pump.band(highest.voltage())
                    .value()
                    .filter(PressureBand::endsAtNoFlow)
                    .isPresent();
            return ends ? Outcome.of(highest.pressure()) : Outcome.notEvaluated(above.apply(high));
        }
        UnivariateFunction function = pascals -> excess.apply(Pressure.ofPascals(pascals));
        return Outcome.of(Pressure.ofPascals(
                new BrentSolver(1e-14, ACCURACY_PASCALS, 0.0).solve(MOST_EVALUATIONS, function, low.si(), high.si())));
    }

    /**
     * Returns what the figures of the supply rest on.
     *
     * @param point the supply at work
     * @return the assumptions
     */
    public List<Assumption> assumptions(SupplyPoint point) {
        List<Assumption> all = new ArrayList<>(fuel.fuel().assumptions());
        all.addAll(pump.assumptionsAt(point.voltage()));
        all.addAll(line.assumptions(point.lineFlow(), fuel));
        all.add(feed().assumption(point));
        return List.copyOf(all);
    }

    /**
     * Explains the supply at work.
     *
     * @param point the supply at work
     * @return the working
     */
    public Working working(SupplyPoint point) {
        Working.Builder working = Working.of("where the pump curve meets the lines")
                .input("regulator", "p_s", Figure.of(regulator.setting(), Display.GAUGE_PRESSURE), "fuel system")
                .input("boost", "p_b", Figure.of(boost, Display.GAUGE_PRESSURE), "fuel system")
                .input("lift", "h", Figure.of(lift, Display.DIMENSION), "fuel system")
                .input("density of the fuel", "rho", Figure.of(fuel.density(), Display.DENSITY), "fuel")
                .input("viscosity of the fuel", "nu", Figure.of(fuel.viscosity(), Display.VISCOSITY), "fuel")
                .input("voltage of the supply", "V_s", Figure.of(voltage, Display.VOLTAGE), "fuel system");
        wire.ifPresent(copper -> working.input(
                "resistance of the wires, both ways, in ohms", "R", Figure.plain(copper.ohms(), 4), "fuel system"));
        working.step(
                "pressure that the regulator holds",
                regulator.referenced() ? "p_r = p_s + p_b" : "p_r = p_s",
                Figure.of(held(), Display.GAUGE_PRESSURE));
        point.current()
                .ifPresent(amperes ->
                        working.step("current of the pump", "I, measured", Figure.of(amperes, Display.CURRENT)));
        return working.step("voltage at the pump", "V = V_s - I R", Figure.of(point.voltage(), Display.VOLTAGE))
                .step(
                        "flow of the pump",
                        "Q: pump curve at V meets p_r + losses + lift",
                        Figure.of(point.flow(), Display.VOLUME_FLOW))
                .step("flow in the feed line", "Q_l", Figure.of(point.lineFlow(), Display.VOLUME_FLOW))
                .step(
                        "loss ahead of the pump",
                        "sum (f l/d + K) rho v2/2, and filters",
                        Figure.of(point.suctionLoss(), Display.GAUGE_PRESSURE))
                .step(
                        "loss in the feed line",
                        "sum (f l/d + K) rho v2/2, and filters",
                        Figure.of(point.feedLoss(), Display.GAUGE_PRESSURE))
                .step("pressure of the lift", "rho g h", Figure.of(point.liftPressure(), Display.GAUGE_PRESSURE))
                .step(
                        "pressure that the pump adds",
                        "p = p_r + losses + lift",
                        Figure.of(point.added(), Display.GAUGE_PRESSURE))
                .step("pressure in the rail", "p_rail", Figure.of(point.rail(), Display.GAUGE_PRESSURE))
                .source(PipeFlow.SOURCE)
                .source(MEASURED)
                .source(Wire.RESISTIVITY)
                .build();
    }
}
