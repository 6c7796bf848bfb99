package drivetrain.fuel;

import drivetrain.quantity.Current;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The flow of a pump against the pressure that it adds, measured at one voltage.
 *
 * <p>Between two points flow and current lie on the straight line; outside them nothing is known.
 *
 * @param voltage the voltage at the pump's own terminals, 5 to 60 V
 * @param points 2 to 200 points in rising pressure, the flow never rising; the current in all of them or in none
 */
public record PumpCurve(Voltage voltage, List<PumpPoint> points) {

    /** The most points that a curve may have. */
    public static final int MOST_POINTS = 200;

    static final Voltage LEAST_VOLTAGE = Voltage.ofVolts(5.0);
    static final Voltage MOST_VOLTAGE = Voltage.ofVolts(60.0);

    /**
     * Checks the points and copies the list.
     *
     * @throws drivetrain.refusal.RefusedException if there are too few or too many points, a pressure does not rise, a flow rises, or a current is missing in some
     */
    public PumpCurve {
        voltage.requireBetween("voltage of the pump curve", LEAST_VOLTAGE, MOST_VOLTAGE, Voltage.VOLT);
        points = List.copyOf(points);
        if (points.size() < 2 || points.size() > MOST_POINTS) {
            throw Refusal.of("pump curve", "", "has " + points.size() + (points.size() == 1 ? " point" : " points"))
                    .allowing("2 to " + MOST_POINTS + " points of flow against pressure")
                    .asException();
        }
        for (int i = 1; i < points.size(); i++) {
            requireInOrder(points.get(i - 1), points.get(i));
        }
    }

    private static void requireInOrder(PumpPoint before, PumpPoint point) {
        if (!point.pressure().isGreaterThan(before.pressure())) {
            throw refusal(point, "does not follow a lower pressure", "pressures in rising order");
        }
        if (point.flow().isGreaterThan(before.flow())) {
            throw refusal(point, "has more flow than at a lower pressure", "a flow that falls as the pressure rises");
        }
        if (point.current().isPresent() != before.current().isPresent()) {
            throw refusal(point, "and its neighbor have not both a current", "a current at every point or at none");
        }
    }

    private static RuntimeException refusal(PumpPoint point, String problem, String allowed) {
        return Refusal.of("pump curve", point.pressure().format(Pressure.PSI, 1), problem)
                .allowing(allowed)
                .asException();
    }

    /**
     * Returns the lowest pressure at which the pump was measured.
     *
     * @return the pressure
     */
    public Pressure lowest() {
        return points.get(0).pressure();
    }

    /**
     * Returns the highest pressure at which the pump was measured.
     *
     * @return the pressure
     */
    public Pressure highest() {
        return points.get(points.size() - 1).pressure();
    }

    /** The flow at a pressure; empty outside the points, and zero above a last point without flow. */
    Optional<VolumeFlow> flowAt(Pressure pressure) {
        PumpPoint last = points.get(points.size() - 1);
        if (last.flow().si() == 0.0 && pressure.isGreaterThan(last.pressure())) {
            return Optional.of(last.flow());
        }
        return at(pressure, point -> point.flow().si()).map(VolumeFlow::ofCubicMetersPerSecond);
    }

    Optional<Current> currentAt(Pressure pressure) {
        boolean measured = points.get(0).current().isPresent();
        return measured
                ? at(pressure, point -> point.current().orElseThrow().si()).map(Current::ofAmperes)
                : Optional.empty();
    }

    private Optional<Double> at(Pressure pressure, ToDoubleFunction<PumpPoint> value) {
        if (pressure.isLessThan(lowest()) || pressure.isGreaterThan(highest())) {
            return Optional.empty();
        }
        int right = 1;
        while (right < points.size() - 1
                && pressure.isGreaterThan(points.get(right).pressure())) {
            right++;
        }
        PumpPoint from = points.get(right - 1);
        PumpPoint to = points.get(right);
        double share = pressure.minus(from.pressure()).ratioTo(to.pressure().minus(from.pressure()));
        return Optional.of(value.applyAsDouble(from) * (1.0 - share) + value.applyAsDouble(to) * share);
    }

    PumpCurve withFlowTimes(double factor) {
        return new PumpCurve(
                voltage,
                points.stream()
                        .map(point ->
                                new PumpPoint(point.pressure(), point.flow().times(factor), point.current()))
                        .toList());
    }

    boolean endsAtNoFlow() {
        return points.get(points.size() - 1).flow().si() == 0.0;
    }

    /**
     * The curve carried to another voltage by similarity: with r the ratio of the voltages, flow times r, pressure and current times r squared.
     *
     * @param curve the measured curve
     * @param r the ratio of the voltages
     */
    record Similar(PumpCurve curve, double r) {

        static Similar of(PumpCurve curve, Voltage voltage) {
            return new Similar(curve, voltage.ratioTo(curve.voltage()));
        }

        Optional<VolumeFlow> flowAt(Pressure pressure) {
            return curve.flowAt(measured(pressure)).map(flow -> flow.times(r));
        }

        Optional<Current> currentAt(Pressure pressure) {
            return curve.currentAt(measured(pressure)).map(current -> current.times(r * r));
        }

        Pressure lowest() {
            return curve.lowest().times(r * r);
        }

        Pressure highest() {
            return curve.highest().times(r * r);
        }

        /** The ends are met exactly, whatever the rounding. */
        private Pressure measured(Pressure pressure) {
            if (pressure.equals(highest())) {
                return curve.highest();
            }
            return pressure.equals(lowest()) ? curve.lowest() : pressure.dividedBy(r * r);
        }
    }
}
