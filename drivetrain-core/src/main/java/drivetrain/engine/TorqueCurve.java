package drivetrain.engine;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Torque;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A full-load torque curve through measured points, by {@link MonotoneCubic} interpolation of torque over speed.
 *
 * <p>Three points are the least: two are a straight line that can show no peak between them. Nothing is extrapolated.
 */
public final class TorqueCurve implements TorqueSource {

    /** The least count of points. */
    public static final int LEAST_POINTS = 3;

    /** The greatest count of points. */
    public static final int MOST_POINTS = 1000;

    private static final String INTERPOLATION = "T(n) by monotone cubic interpolation of the measured points";

    private final List<OperatingPoint> points;
    private final MonotoneCubic curve;
    private final OperatingPoint peakTorque;
    private final OperatingPoint peakPower;
    private final Outcome<Torque> below;
    private final Outcome<Torque> above;

    private TorqueCurve(List<OperatingPoint> points) {
        this.points = points;
        curve = MonotoneCubic.of(
                points.stream().mapToDouble(point -> point.speed().si()).toArray(),
                points.stream().mapToDouble(point -> point.torque().si()).toArray());
        peakTorque = pointAt(curve.highest().x());
        peakPower = pointAt(curve.highestProduct().x());
        below = Outcome.notEvaluated(
                "the torque curve starts at " + ShownText.rpm(points.get(0).speed()) + " and nothing is extrapolated");
        above = Outcome.notEvaluated("the torque curve ends at "
                + ShownText.rpm(points.get(points.size() - 1).speed()) + " and nothing is extrapolated");
    }

    /**
     * Lays a curve through measured points.
     *
     * @param points 3 to 1000 points with strictly increasing speeds
     * @return the curve
     * @throws drivetrain.refusal.RefusedException if the points are too few, too many or not in order
     */
    public static TorqueCurve of(List<OperatingPoint> points) {
        if (points.size() < LEAST_POINTS || points.size() > MOST_POINTS) {
            throw Refusal.of("torque curve", points.size() + " points", "cannot be drawn")
                    .allowing(
                            LEAST_POINTS + " to " + MOST_POINTS + " points; where only the peaks are known, both peaks")
                    .asException();
        }
        for (int i = 1; i < points.size(); i++) {
            AngularSpeed before = points.get(i - 1).speed();
            AngularSpeed speed = points.get(i).speed();
            if (!speed.isGreaterThan(before)) {
                throw Refusal.of(
                                "torque curve",
                                ShownText.rpm(speed) + " after " + ShownText.rpm(before),
                                "is not in order")
                        .allowing("strictly increasing engine speeds")
                        .asException();
            }
        }
        return new TorqueCurve(List.copyOf(points));
    }

    /**
     * Returns the measured points.
     *
     * @return the points in order of speed
     */
    public List<OperatingPoint> points() {
        return points;
    }

    @Override
    public Outcome<Torque> torqueAt(AngularSpeed speed) {
        double n = speed.si();
        if (n < curve.first()) {
            return below;
        }
        return n > curve.last() ? above : Outcome.of(Torque.ofNewtonMeters(curve.valueAt(n)));
    }

    @Override
    public Outcome<OperatingPoint> peakTorque() {
        return Outcome.of(peakTorque);
    }

    @Override
    public Outcome<OperatingPoint> peakPower() {
        return Outcome.of(peakPower);
    }

    @Override
    public Optional<SpeedBand> band() {
        return Optional.of(new SpeedBand(
                points.get(0).speed(), points.get(points.size() - 1).speed()));
    }

    @Override
    public Optional<OperatingPoint> slowestMeasurement() {
        return Optional.of(points.get(0));
    }

    @Override
    public List<Assumption> assumptions() {
        return List.of();
    }

    @Override
    public Outcome<Working> torqueWorking(AngularSpeed speed) {
        return torqueAt(speed)
                .map(torque -> working("engine torque at " + ShownText.rpm(speed))
                        .input("engine speed", "n", Figure.of(speed, Display.ROTATION), "asked for")
                        .step("engine torque", INTERPOLATION, Figure.of(torque, Display.TORQUE))
                        .source(EngineSources.INTERPOLATION)
                        .build());
    }

    @Override
    public Outcome<Working> peakTorqueWorking() {
        return Outcome.of(working("peak torque")
                .step(
                        "speed of peak torque",
                        "greatest T(n), from the stationary points of each cubic",
                        Figure.of(peakTorque.speed(), Display.ROTATION))
                .step("peak torque", INTERPOLATION, Figure.of(peakTorque.torque(), Display.TORQUE))
                .source(EngineSources.INTERPOLATION)
                .build());
    }

    @Override
    public Outcome<Working> peakPowerWorking() {
        return Outcome.of(working("peak power")
                .step(
                        "speed of peak power",
                        "greatest P(n) = T(n) · n, where d(n T)/dn = 0 on each cubic",
                        Figure.of(peakPower.speed(), Display.ROTATION))
                .step("torque there", INTERPOLATION, Figure.of(peakPower.torque(), Display.TORQUE))
                .step("peak power", "P = T · n", Figure.of(peakPower.power(), Display.POWER))
                .source(EngineSources.INTERPOLATION)
                .source(EngineSources.POWER)
                .build());
    }

    private Working.Builder working(String question) {
        OperatingPoint first = points.get(0);
        OperatingPoint last = points.get(points.size() - 1);
        return Working.of(question)
                .input("measured points", "N", Figure.plain(points.size(), 0), "torque curve")
                .input("first measured speed", "n_1", Figure.of(first.speed(), Display.ROTATION), "torque curve")
                .input("last measured speed", "n_N", Figure.of(last.speed(), Display.ROTATION), "torque curve");
    }

    @Override
    public String text() {
        return points.stream()
                .map(point -> EngineText.torque(point.torque()) + " at " + EngineText.speed(point.speed()))
                .collect(Collectors.joining(", "));
    }

    /**
     * Tells whether the other object is a curve through the same points.
     *
     * @param other any object
     * @return true if equal
     */
    @Override
    public boolean equals(@org.jspecify.annotations.Nullable Object other) {
        return other instanceof TorqueCurve that && that.points.equals(points);
    }

    /**
     * Returns a hash of the points.
     *
     * @return the hash
     */
    @Override
    public int hashCode() {
        return points.hashCode();
    }

    /**
     * Returns the points as they stand in an engine's literal text.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return text();
    }

    private OperatingPoint pointAt(double radiansPerSecond) {
        return new OperatingPoint(
                AngularSpeed.ofRadiansPerSecond(radiansPerSecond),
                Torque.ofNewtonMeters(curve.valueAt(radiansPerSecond)));
    }
}
