package drivetrain.gearing;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.CapacityFactor;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Power;
import drivetrain.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * A converter behind an engine: the speeds at which the torque that the pump takes up is the torque that the engine gives.
 *
 * @param curve the converter's curve, given or estimated
 * @param stall the point at which the turbine stands still, engine at full load
 * @param fullLoad the points at full load with rising turbine speed, the stall point first
 * @param assumptions what the curve rests on where it is estimated
 */
public record ConverterMatch(ConverterCurve curve, Point stall, List<Point> fullLoad, List<Assumption> assumptions) {

    private static final Source SOURCE = ConverterCurve.source();
    private static final int PARTS_BETWEEN_POINTS = 4;
    private static final int MOST_EVALUATIONS = 100;
    private static final double TOLERANCE = 1e-9;

    /**
     * One state of the converter.
     *
     * @param speedRatio turbine speed over pump speed
     * @param pumpSpeed the engine speed
     * @param pumpTorque the engine torque
     * @param turbineSpeed the speed at the transmission's input
     * @param turbineTorque the torque at the transmission's input
     */
    public record Point(
            double speedRatio,
            AngularSpeed pumpSpeed,
            Torque pumpTorque,
            AngularSpeed turbineSpeed,
            Torque turbineTorque) {

        /**
         * Returns what is lost as heat in the oil.
         *
         * @return power in less power out
         */
        public Power heat() {
            return Power.ofWatts(pumpTorque.at(pumpSpeed).si()
                    - turbineTorque.at(turbineSpeed).si());
        }
    }

    /** Copies the lists. */
    public ConverterMatch {
        fullLoad = List.copyOf(fullLoad);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * An engine at full load.
     *
     * @param lowest the slowest speed at which its torque is known
     * @param highest the highest speed
     * @param torque its torque between them, in the air in which it runs
     * @param rated its torque between them in the air in which a converter's stall speed is stated
     */
    public record FullLoad(
            AngularSpeed lowest,
            AngularSpeed highest,
            Function<AngularSpeed, Torque> torque,
            Function<AngularSpeed, Torque> rated) {}

    /**
     * Matches a converter with an engine.
     *
     * @param converter the converter
     * @param engine the engine at full load
     * @return the match, or what is missing or does not meet
     */
    public static Outcome<ConverterMatch> of(Converter converter, FullLoad engine) {
        if (converter.curve().isPresent()) {
            return match(converter.curve().get(), engine, List.of());
        }
        if (converter.stallSpeed().isEmpty() || converter.stallTorqueRatio().isEmpty()) {
            return Outcome.notEvaluated(
                    "the converter's curve is not given, nor its stall speed and stall torque ratio; "
                            + "type them behind the transmission: converter stall 2.0 stall-speed 2200 rpm");
        }
        AngularSpeed speed = converter.stallSpeed().get();
        if (speed.isLessThan(engine.lowest()) || speed.isGreaterThan(engine.highest())) {
            return Outcome.notEvaluated("the engine's torque is not known at the converter's stall speed of "
                    + speed.format(AngularSpeed.RPM, 0));
        }
        double root = Math.sqrt(engine.rated().apply(speed).si());
        CapacityFactor stall = CapacityFactor.ofRadiansPerSecondPerRootNewtonMeter(speed.si() / root);
        return match(
                ConverterCurve.estimate(converter.stallTorqueRatio().getAsDouble(), stall),
                engine,
                List.of(ConverterCurve.estimateAssumption()));
    }

    private static Outcome<ConverterMatch> match(ConverterCurve curve, FullLoad engine, List<Assumption> assumptions) {
        UnivariateFunction surplus = surplus(curve, engine, 0.0);
        if (surplus.value(engine.lowest().si()) < 0.0) {
            return Outcome.notEvaluated(
                    "the converter never meets the engine: it is so tight that it holds the engine below "
                            + engine.lowest().format(AngularSpeed.RPM, 0));
        }
        if (surplus.value(engine.highest().si()) > 0.0) {
            return Outcome.notEvaluated(
                    "the converter never meets the engine: it is so loose that the engine runs beyond "
                            + engine.highest().format(AngularSpeed.RPM, 0));
        }
        List<Point> points = new ArrayList<>();
        for (double speedRatio : grid(curve)) {
            UnivariateFunction balance = surplus(curve, engine, speedRatio);
            if (balance.value(engine.highest().si()) > 0.0
                    || balance.value(engine.lowest().si()) < 0.0) {
                break;
            }
            double pump = new BrentSolver(TOLERANCE)
                    .solve(
                            MOST_EVALUATIONS,
                            balance,
                            engine.lowest().si(),
                            engine.highest().si());
            Point point = at(curve, speedRatio, pump);
            if (points.isEmpty()
                    || point.turbineSpeed()
                            .isGreaterThan(points.get(points.size() - 1).turbineSpeed())) {
                points.add(point);
            }
        }
        return Outcome.of(new ConverterMatch(curve, points.get(0), points, assumptions));
    }

    private static UnivariateFunction surplus(ConverterCurve curve, FullLoad engine, double speedRatio) {
        double k = curve.capacitySi(speedRatio);
        return pump ->
                engine.torque().apply(AngularSpeed.ofRadiansPerSecond(pump)).si() - pump * pump / (k * k);
    }

    private static List<Double> grid(ConverterCurve curve) {
        List<Double> grid = new ArrayList<>();
        List<ConverterCurve.Point> points = curve.points();
        for (int i = 0; i + 1 < points.size(); i++) {
            double start = points.get(i).speedRatio();
            double step = (points.get(i + 1).speedRatio() - start) / PARTS_BETWEEN_POINTS;
            for (int part = 0; part < PARTS_BETWEEN_POINTS; part++) {
                grid.add(start + part * step);
            }
        }
        grid.add(curve.lastSpeedRatio());
        return grid;
    }

    private static Point at(ConverterCurve curve, double speedRatio, double pump) {
        double k = curve.capacitySi(speedRatio);
        double torque = pump * pump / (k * k);
        return new Point(
                speedRatio,
                AngularSpeed.ofRadiansPerSecond(pump),
                Torque.ofNewtonMeters(torque),
                AngularSpeed.ofRadiansPerSecond(pump * speedRatio),
                Torque.ofNewtonMeters(torque * curve.torqueRatioAt(speedRatio)));
    }

    /**
     * Returns the full-load points that lie at points of the curve, for showing.
     *
     * @return the points, the stall point first
     */
    public List<Point> atCurvePoints() {
        return fullLoad.stream()
                .filter(point -> curve.points().stream().anyMatch(known -> known.speedRatio() == point.speedRatio()))
                .toList();
    }

    /**
     * Returns the highest turbine speed at which the converter works at full load with the engine within its speeds.
     *
     * @return the turbine speed of the last point
     */
    public AngularSpeed fastestTurbine() {
        return fullLoad.get(fullLoad.size() - 1).turbineSpeed();
    }

    /**
     * Returns the torque at the transmission's input at full load.
     *
     * @param turbine the speed there, from zero to {@link #fastestTurbine}
     * @return the torque, by straight lines between the points
     */
    public Torque turbineTorqueAt(AngularSpeed turbine) {
        int i = 0;
        while (i < fullLoad.size() - 2
                && turbine.isGreaterThan(fullLoad.get(i + 1).turbineSpeed())) {
            i++;
        }
        if (fullLoad.size() == 1) {
            return stall.turbineTorque();
        }
        Point left = fullLoad.get(i);
        Point right = fullLoad.get(i + 1);
        double share = (turbine.si() - left.turbineSpeed().si())
                / (right.turbineSpeed().si() - left.turbineSpeed().si());
        double torque = left.turbineTorque().si()
                + share * (right.turbineTorque().si() - left.turbineTorque().si());
        return Torque.ofNewtonMeters(torque);
    }

    /**
     * Finds the state in which the turbine gives a torque at a speed, as at a steady cruise with the converter open.
     *
     * @param turbine the turbine speed, greater than zero
     * @param torque the turbine torque, greater than zero
     * @return the state, or why there is none
     */
    public Outcome<Point> atLoad(AngularSpeed turbine, Torque torque) {
        if (!(turbine.si() > 0.0 && torque.si() > 0.0)) {
            return Outcome.notEvaluated("the converter carries no torque there");
        }
        double last = curve.lastSpeedRatio();
        UnivariateFunction surplus = speedRatio -> {
            double pump = turbine.si() / speedRatio;
            double k = curve.capacitySi(speedRatio);
            return curve.torqueRatioAt(speedRatio) * pump * pump / (k * k) - torque.si();
        };
        if (surplus.value(last) > 0.0) {
            return Outcome.of(at(curve, last, turbine.si() / last));
        }
        double slowest = 0.02;
        if (surplus.value(slowest) < 0.0) {
            return Outcome.notEvaluated("the converter cannot carry that torque at that speed");
        }
        double speedRatio = new BrentSolver(TOLERANCE).solve(MOST_EVALUATIONS, surplus, slowest, last);
        return Outcome.of(at(curve, speedRatio, turbine.si() / speedRatio));
    }

    /**
     * Returns the torque that creeps: at the transmission's input with the vehicle held and the engine at idle.
     *
     * @param idle the idle speed
     * @return stall torque ratio x (idle / K)^2
     */
    public Torque creepTorque(AngularSpeed idle) {
        return at(curve, 0.0, idle.si()).turbineTorque();
    }

    /**
     * Finds how fast the turbine turns when the engine idles against a load that does not depend on speed.
     *
     * @param idle the idle speed
     * @param torque the torque that the load takes at the transmission's input
     * @return the turbine speed; zero where the converter cannot move the load at idle
     */
    public AngularSpeed creepSpeed(AngularSpeed idle, Torque torque) {
        UnivariateFunction surplus =
                speedRatio -> at(curve, speedRatio, idle.si()).turbineTorque().si() - torque.si();
        if (surplus.value(0.0) <= 0.0) {
            return AngularSpeed.ofRadiansPerSecond(0.0);
        }
        double last = curve.lastSpeedRatio();
        double speedRatio = surplus.value(last) >= 0.0
                ? last
                : new BrentSolver(TOLERANCE).solve(MOST_EVALUATIONS, surplus, 0.0, last);
        return idle.times(speedRatio);
    }

    /**
     * Shows how the stall point is worked out.
     *
     * @return the working
     */
    public Working working() {
        return Working.of("converter behind the engine")
                .input(
                        "capacity factor at stall",
                        "K",
                        Figure.of(curve.points().get(0).capacity(), Display.CAPACITY),
                        "curve")
                .input("torque ratio at stall", "m", Figure.plain(curve.stallTorqueRatio(), 2), "curve")
                .step(
                        "stall speed",
                        "n at which the engine's torque T(n) = (n / K)^2, by root finding",
                        Figure.of(stall.pumpSpeed(), Display.ROTATION))
                .step("engine torque at stall", "T = (n / K)^2", Figure.of(stall.pumpTorque(), Display.TORQUE))
                .step(
                        "torque behind the converter at stall",
                        "T_t = m T",
                        Figure.of(stall.turbineTorque(), Display.TORQUE))
                .step(
                        "heat at stall",
                        "P = T n, none of it leaves the converter",
                        Figure.of(stall.heat(), Display.POWER))
                .source(SOURCE)
                .build();
    }
}
