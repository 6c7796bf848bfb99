package drivetrain.fuel;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.Current;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Several pumps together: side by side, where their flows add at one pressure, or one behind the other, where their pressures add at one flow.
 *
 * @param name the literal text
 * @param pumps 2 to 4 pumps
 * @param arrangement how they are piped
 */
public record PumpSet(String name, List<Pump> pumps, Arrangement arrangement) implements Pump {

    private static final int MOST_PUMPS = 4;
    private static final double FLOW_ACCURACY = 1e-12;
    private static final double PRESSURE_ACCURACY = 1e-3;
    private static final int MOST_EVALUATIONS = 200;

    private static final Assumption CHECK_VALVES = Assumption.of(
            "pumps in parallel",
            "each pump has a check valve, so that none pumps back through another, and wires of its own",
            Source.commonPractice("pumps side by side are piped through check valves"));
    private static final Assumption OWN_WIRES = Assumption.of(
            "pumps in series", "each pump has wires of its own", Source.commonPractice("each pump is wired by itself"));

    /** How the pumps are piped. */
    public enum Arrangement {
        /** Side by side. */
        PARALLEL("in parallel"),
        /** One behind the other. */
        SERIES("in series");

        private final String label;

        Arrangement(String label) {
            this.label = label;
        }

        /**
         * Returns the words of the trade.
         *
         * @return the label
         */
        public String label() {
            return label;
        }
    }

    /**
     * Checks the number and copies the list.
     *
     * @throws drivetrain.refusal.RefusedException if there are fewer than 2 or more than 4 pumps
     */
    public PumpSet {
        pumps = List.copyOf(pumps);
        if (pumps.size() < 2 || pumps.size() > MOST_PUMPS) {
            throw Refusal.of("pumps " + arrangement.label(), name, "are " + pumps.size())
                    .allowing("2 to " + MOST_PUMPS + " pumps")
                    .asException();
        }
    }

    @Override
    public Outcome<VolumeFlow> flowAt(Pressure pressure, Voltage voltage) {
        return arrangement == Arrangement.PARALLEL
                ? sum(pump -> pump.flowAt(pressure, voltage).map(VolumeFlow::si))
                        .map(VolumeFlow::ofCubicMetersPerSecond)
                : serialFlow(pressure, voltage);
    }

    @Override
    public Outcome<Current> currentAt(Pressure pressure, Voltage voltage) {
        if (arrangement == Arrangement.PARALLEL) {
            return sum(pump -> pump.currentAt(pressure, voltage).map(Current::si))
                    .map(Current::ofAmperes);
        }
        return serialFlow(pressure, voltage)
                .then(flow -> sum(pump -> pressureOf(pump, flow.si(), voltage)
                                .then(rise -> pump.currentAt(rise, voltage).map(Current::si)))
                        .map(Current::ofAmperes));
    }

    private Outcome<Double> sum(Function<Pump, Outcome<Double>> value) {
        Outcome<Double> total = Outcome.of(0.0);
        for (Pump pump : pumps) {
            total = total.then(before -> value.apply(pump).map(more -> before + more));
        }
        return total;
    }

    /** The flow at which the pressures of all pumps add up to the one asked for. */
    private Outcome<VolumeFlow> serialFlow(Pressure pressure, Voltage voltage) {
        return flowRange(voltage).then(range -> {
            double least = range[0];
            double most = range[1];
            Outcome<Double> atLeast =
                    sum(pump -> pressureOf(pump, least, voltage).map(Pressure::si));
            Outcome<Double> atMost = sum(pump -> pressureOf(pump, most, voltage).map(Pressure::si));
            return atLeast.then(high -> atMost.then(low -> {
                if (pressure.si() > high || pressure.si() < low) {
                    return Outcome.<VolumeFlow>notEvaluated("the pumps in series were measured for "
                            + Pressure.ofPascals(low).format(Pressure.PSI, 1) + " to "
                            + Pressure.ofPascals(high).format(Pressure.PSI, 1)
                            + " together, and they would have to add "
                            + pressure.format(Pressure.PSI, 1));
                }
                if (pressure.si() == high || least == most) {
                    return Outcome.of(VolumeFlow.ofCubicMetersPerSecond(least));
                }
                double flow = new BrentSolver(1e-12, FLOW_ACCURACY, PRESSURE_ACCURACY)
                        .solve(
                                MOST_EVALUATIONS,
                                q -> sum(pump -> pressureOf(pump, q, voltage).map(Pressure::si))
                                                .orThrow()
                                        - pressure.si(),
                                least,
                                most);
                return Outcome.of(VolumeFlow.ofCubicMetersPerSecond(flow));
            }));
        });
    }

    /** The least and the most flow that every pump of the set was measured for. */
    private Outcome<double[]> flowRange(Voltage voltage) {
        Outcome<double[]> range = Outcome.of(new double[] {0.0, Double.MAX_VALUE});
        for (Pump pump : pumps) {
            range = range.then(before -> pump.band(voltage)
                    .then(band -> pump.flowAt(band.highest(), voltage)
                            .then(least -> pump.flowAt(band.lowest(), voltage).map(most ->
                                    new double[] {Math.max(before[0], least.si()), Math.min(before[1], most.si())}))));
        }
        return range.then(both -> both[0] <= both[1]
                ? Outcome.of(both)
                : Outcome.notEvaluated("the pumps in series were not measured at a flow that they have in common"));
    }

    /** The pressure that a pump adds at a flow. */
    private static Outcome<Pressure> pressureOf(Pump pump, double flow, Voltage voltage) {
        return pump.band(voltage).map(band -> {
            double low = band.lowest().si();
            double high = band.highest().si();
            double atLow = pump.flowAt(band.lowest(), voltage).orThrow().si();
            double atHigh = pump.flowAt(band.highest(), voltage).orThrow().si();
            if (flow >= atLow) {
                return band.lowest();
            }
            if (flow <= atHigh) {
                return band.highest();
            }
            return Pressure.ofPascals(new BrentSolver(1e-12, PRESSURE_ACCURACY)
                    .solve(
                            MOST_EVALUATIONS,
                            p -> pump.flowAt(Pressure.ofPascals(p), voltage)
                                            .orThrow()
                                            .si()
                                    - flow,
                            low,
                            high));
        });
    }

    @Override
    public Outcome<PressureBand> band(Voltage voltage) {
        if (arrangement == Arrangement.SERIES) {
            return flowRange(voltage)
                    .then(range -> sum(pump ->
                                    pressureOf(pump, range[1], voltage).map(Pressure::si))
                            .then(low -> sum(pump ->
                                            pressureOf(pump, range[0], voltage).map(Pressure::si))
                                    .map(high -> new PressureBand(
                                            Pressure.ofPascals(low), Pressure.ofPascals(high), range[0] == 0.0))));
        }
        Outcome<PressureBand> common = pumps.get(0).band(voltage);
        for (Pump pump : pumps.subList(1, pumps.size())) {
            common = common.then(before -> pump.band(voltage).map(band -> common(before, band)));
        }
        return common;
    }

    private static PressureBand common(PressureBand one, PressureBand other) {
        Pressure lowest = one.lowest().isGreaterThan(other.lowest()) ? one.lowest() : other.lowest();
        if (one.endsAtNoFlow() != other.endsAtNoFlow()) {
            return new PressureBand(lowest, one.endsAtNoFlow() ? other.highest() : one.highest(), false);
        }
        boolean oneIsLess = one.highest().isLessThan(other.highest());
        Pressure highest = oneIsLess == one.endsAtNoFlow() ? other.highest() : one.highest();
        return new PressureBand(lowest, highest, one.endsAtNoFlow());
    }

    @Override
    public List<Assumption> assumptionsAt(Voltage voltage) {
        List<Assumption> all = new ArrayList<>();
        all.add(arrangement == Arrangement.PARALLEL ? CHECK_VALVES : OWN_WIRES);
        for (Pump pump : pumps) {
            pump.assumptionsAt(voltage).stream()
                    .filter(assumption -> !all.contains(assumption))
                    .forEach(all::add);
        }
        return List.copyOf(all);
    }

    @Override
    public Pump withFlowTimes(double factor) {
        return new PumpSet(
                name, pumps.stream().map(pump -> pump.withFlowTimes(factor)).toList(), arrangement);
    }

    @Override
    public int count() {
        return pumps.stream().mapToInt(Pump::count).sum();
    }
}
