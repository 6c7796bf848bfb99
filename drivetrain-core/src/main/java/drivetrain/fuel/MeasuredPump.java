package drivetrain.fuel;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.Current;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A pump with its measured curves.
 *
 * <p>At a voltage between two measured ones, flow and current at a pressure lie on the straight line between those of the neighboring curves. Beyond the measured voltages the nearest curve is carried there by
 * similarity, at most by the ratios of {@code reference-tables/fuel/limits.csv}, which {@link #assumptionsAt} flags.
 *
 * @param name the name in a catalog, or the literal text
 * @param curves 1 to 12 curves in rising voltage
 */
public record MeasuredPump(String name, List<PumpCurve> curves) implements Pump {

    /** The most curves that a pump may have. */
    public static final int MOST_CURVES = 12;

    private static final Source INTERPOLATION = Source.derived("interpolation between measurements");

    private static final Source SIMILARITY = Source.derived(
            "similarity of pumps: flow rises with speed, pressure with its square; speed taken in proportion to voltage");

    /**
     * Checks the order and copies the list.
     *
     * @throws drivetrain.refusal.RefusedException if there are no curves, too many, or their voltages do not rise
     */
    public MeasuredPump {
        curves = List.copyOf(curves);
        if (curves.isEmpty() || curves.size() > MOST_CURVES) {
            throw Refusal.of("pump", name, "has " + curves.size() + " curves")
                    .allowing("1 to " + MOST_CURVES + " curves, each at its voltage")
                    .asException();
        }
        for (int i = 1; i < curves.size(); i++) {
            Voltage voltage = curves.get(i).voltage();
            if (!voltage.isGreaterThan(curves.get(i - 1).voltage())) {
                throw Refusal.of(
                                "pump",
                                name,
                                "has a curve at " + voltage.format(Voltage.VOLT, 1)
                                        + " that does not follow a lower voltage")
                        .allowing("curves in rising order of their voltages")
                        .asException();
            }
        }
    }

    private record Carried(PumpCurve.Similar low, PumpCurve.Similar high, double share) {}

    /** The neighboring curves as measured, or the nearest one carried to the voltage. */
    private Outcome<Carried> carriedTo(Voltage voltage) {
        if (voltage.si() <= 0.0) {
            return Outcome.notEvaluated("no voltage is left at the pump");
        }
        int right = 0;
        while (right < curves.size() - 1
                && voltage.isGreaterThan(curves.get(right).voltage())) {
            right++;
        }
        PumpCurve above = curves.get(right);
        boolean between = right > 0 && voltage.isLessThan(above.voltage());
        PumpCurve below = between ? curves.get(right - 1) : above;
        if (!between && !FuelLimit.of("pump-voltage-ratio").contains(voltage.ratioTo(above.voltage()))) {
            return Outcome.notEvaluated("the pump was measured at " + measuredVoltages() + " and "
                    + voltage.format(Voltage.VOLT, 1) + " is too far from that");
        }
        double share =
                between ? voltage.minus(below.voltage()).ratioTo(above.voltage().minus(below.voltage())) : 0.0;
        return Outcome.of(
                between
                        ? new Carried(new PumpCurve.Similar(below, 1.0), new PumpCurve.Similar(above, 1.0), share)
                        : new Carried(PumpCurve.Similar.of(above, voltage), PumpCurve.Similar.of(above, voltage), 0.0));
    }

    private String measuredVoltages() {
        String first = curves.get(0).voltage().format(Voltage.VOLT, 1);
        return curves.size() == 1
                ? first
                : first + " to " + curves.get(curves.size() - 1).voltage().format(Voltage.VOLT, 1);
    }

    @Override
    public Outcome<VolumeFlow> flowAt(Pressure pressure, Voltage voltage) {
        return carriedTo(voltage)
                .then(carried -> Outcome.of(
                        blend(carried, curve -> curve.flowAt(pressure).map(VolumeFlow::si))
                                .map(VolumeFlow::ofCubicMetersPerSecond),
                        "the pump was measured from " + carried.low().lowest().format(Pressure.PSI, 1) + " to "
                                + carried.low().highest().format(Pressure.PSI, 1) + " at "
                                + voltage.format(Voltage.VOLT, 1) + ", and it would have to add "
                                + pressure.format(Pressure.PSI, 1)));
    }

    @Override
    public Outcome<Current> currentAt(Pressure pressure, Voltage voltage) {
        return carriedTo(voltage)
                .then(carried -> Outcome.of(
                        blend(carried, curve -> curve.currentAt(pressure).map(Current::si))
                                .map(Current::ofAmperes),
                        "the pump's current was not measured there"));
    }

    private static Optional<Double> blend(Carried carried, Function<PumpCurve.Similar, Optional<Double>> value) {
        Optional<Double> low = value.apply(carried.low());
        Optional<Double> high = value.apply(carried.high());
        return low.flatMap(one -> high.map(other -> one * (1.0 - carried.share()) + other * carried.share()));
    }

    @Override
    public Outcome<PressureBand> band(Voltage voltage) {
        return carriedTo(voltage).map(carried -> {
            Pressure lowest = greater(carried.low().lowest(), carried.high().lowest());
            boolean lowEnds = carried.low().curve().endsAtNoFlow();
            boolean highEnds = carried.high().curve().endsAtNoFlow();
            Pressure lowHighest = carried.low().highest();
            Pressure highHighest = carried.high().highest();
            if (lowEnds && highEnds) {
                return new PressureBand(lowest, greater(lowHighest, highHighest), true);
            }
            if (lowEnds) {
                return new PressureBand(lowest, highHighest, false);
            }
            return highEnds
                    ? new PressureBand(lowest, lowHighest, false)
                    : new PressureBand(lowest, lowHighest.isLessThan(highHighest) ? lowHighest : highHighest, false);
        });
    }

    private static Pressure greater(Pressure one, Pressure other) {
        return one.isGreaterThan(other) ? one : other;
    }

    @Override
    public List<Assumption> assumptionsAt(Voltage voltage) {
        boolean measured = curves.stream().anyMatch(curve -> curve.voltage().equals(voltage));
        if (measured) {
            return List.of();
        }
        boolean between = voltage.isGreaterThan(curves.get(0).voltage())
                && voltage.isLessThan(curves.get(curves.size() - 1).voltage());
        String volts = DecimalText.fixed(voltage.toVolts(), 1) + " V";
        return List.of(
                between
                        ? Assumption.of(
                                "pump at another voltage",
                                "the pump was measured at " + measuredVoltages() + "; at " + volts
                                        + " it lies on the straight line between two measured curves",
                                INTERPOLATION)
                        : Assumption.flagged(
                                "pump at another voltage",
                                "the pump was measured at " + measuredVoltages() + "; its curve is carried to " + volts
                                        + " by similarity",
                                SIMILARITY));
    }

    @Override
    public Pump withFlowTimes(double factor) {
        return new MeasuredPump(
                name, curves.stream().map(curve -> curve.withFlowTimes(factor)).toList());
    }

    @Override
    public int count() {
        return 1;
    }
}
