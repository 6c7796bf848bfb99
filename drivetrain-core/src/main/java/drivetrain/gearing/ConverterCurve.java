package drivetrain.gearing;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.CapacityFactor;
import drivetrain.quantity.DecimalText;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The characteristic of a torque converter over its speed ratio: how much it multiplies torque, and how much torque it takes up. Straight lines join the points; nothing is
 * extrapolated.
 *
 * @param points 2 to 40 points with rising speed ratios, the first at 0
 */
public record ConverterCurve(List<Point> points) {

    private static final int FEWEST = 2;
    private static final int MOST = 40;
    private static final double MOST_SPEED_RATIO = 0.99;
    private static final double LEAST_K = 20.0;
    private static final double MOST_K = 3000.0;
    private static final double MOST_TORQUE_RATIO = 5.0;
    private static final double LEAST_TORQUE_RATIO = 0.5;
    private static final String ALLOWED =
            "speed ratios rising from 0 to at most 0.99, torque ratios of 0.5 to 5 that do not rise, efficiency up to 1, K of 20 to 3000 rpm/sqrt(lb-ft)";

    private static final class Shape {
        static final ReferenceTable TABLE = ReferenceTable.load("gearing/converter-shape.csv");
    }

    /**
     * One point.
     *
     * @param speedRatio turbine speed over pump speed
     * @param torqueRatio turbine torque over pump torque
     * @param capacity pump speed over the square root of pump torque, the trade's K
     */
    public record Point(double speedRatio, double torqueRatio, CapacityFactor capacity) {}

    /**
     * Checks the points.
     *
     * @throws RefusedException if they are too few or too many, not in order, or impossible
     */
    public ConverterCurve {
        points = List.copyOf(points);
        if (points.size() < FEWEST || points.size() > MOST) {
            throw refusal(points.size() + " points", "cannot be drawn", FEWEST + " to " + MOST + " points");
        }
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            boolean first = i == 0;
            boolean inOrder = first
                    ? point.speedRatio() == 0.0
                    : point.speedRatio() > points.get(i - 1).speedRatio()
                            && point.torqueRatio() <= points.get(i - 1).torqueRatio();
            if (!inOrder || !isPossible(point)) {
                throw refusal(shown(point), inOrder ? "is impossible" : "is out of order", ALLOWED);
            }
        }
    }

    private static boolean isPossible(Point point) {
        double k = point.capacity().toRpmPerRootPoundFoot();
        return point.speedRatio() <= MOST_SPEED_RATIO
                && point.torqueRatio() >= LEAST_TORQUE_RATIO
                && point.torqueRatio() <= MOST_TORQUE_RATIO
                && point.speedRatio() * point.torqueRatio() <= 1.0
                && k >= LEAST_K
                && k <= MOST_K;
    }

    private static RefusedException refusal(String given, String problem, String allowed) {
        return Refusal.of("converter curve", given, problem).allowing(allowed).asException();
    }

    /**
     * Estimates the curve of a converter of which only the stall point is known.
     *
     * @param stallTorqueRatio turbine torque over pump torque at stall, 1 to 5
     * @param stallCapacity the capacity factor at stall
     * @return a curve of common shape through that point; {@link #estimateAssumption} must stand beside every figure from it
     * @throws RefusedException if the stall point is impossible
     */
    public static ConverterCurve estimate(double stallTorqueRatio, CapacityFactor stallCapacity) {
        List<Point> points = new ArrayList<>();
        for (TableRow row : Shape.TABLE.rows()) {
            double multiplied = 1.0 + (stallTorqueRatio - 1.0) * row.number("gain");
            double torqueRatio = Math.min(multiplied, row.number("cap"));
            points.add(new Point(row.number("speedRatio"), torqueRatio, stallCapacity.times(row.number("capacity"))));
        }
        return new ConverterCurve(points);
    }

    /**
     * States that a curve was estimated.
     *
     * @return the assumption, flagged
     */
    public static Assumption estimateAssumption() {
        return Assumption.flagged(
                "converter curve",
                "the converter's curve is an estimate of common shape through its stall point; expect errors of 15 % away from stall",
                Shape.TABLE.source());
    }

    /**
     * Returns the torque ratio.
     *
     * @param speedRatio turbine speed over pump speed, from 0 to the last point's
     * @return turbine torque over pump torque
     */
    public double torqueRatioAt(double speedRatio) {
        int i = piece(speedRatio);
        return between(
                i, speedRatio, points.get(i).torqueRatio(), points.get(i + 1).torqueRatio());
    }

    /**
     * Returns the capacity factor.
     *
     * @param speedRatio turbine speed over pump speed, from 0 to the last point's
     * @return pump speed over the square root of pump torque
     */
    public CapacityFactor capacityAt(double speedRatio) {
        return CapacityFactor.ofRadiansPerSecondPerRootNewtonMeter(capacitySi(speedRatio));
    }

    double capacitySi(double speedRatio) {
        int i = piece(speedRatio);
        return between(
                i,
                speedRatio,
                points.get(i).capacity().si(),
                points.get(i + 1).capacity().si());
    }

    private int piece(double speedRatio) {
        if (!(speedRatio >= 0.0 && speedRatio <= lastSpeedRatio())) {
            throw refusal(
                    Double.toString(speedRatio),
                    "lies outside the curve",
                    "0 to " + DecimalText.shortest(lastSpeedRatio()));
        }
        int i = 0;
        while (i < points.size() - 2 && speedRatio > points.get(i + 1).speedRatio()) {
            i++;
        }
        return i;
    }

    private double between(int i, double speedRatio, double left, double right) {
        double start = points.get(i).speedRatio();
        double share = (speedRatio - start) / (points.get(i + 1).speedRatio() - start);
        return left + share * (right - left);
    }

    /**
     * Returns the torque ratio at stall.
     *
     * @return the first point's
     */
    public double stallTorqueRatio() {
        return points.get(0).torqueRatio();
    }

    /**
     * Returns the highest speed ratio of the curve.
     *
     * @return the last point's
     */
    public double lastSpeedRatio() {
        return points.get(points.size() - 1).speedRatio();
    }

    /** Where the law of the converter comes from. */
    static Source source() {
        return Source.derived(
                "similarity: at one speed ratio the torque goes with the square of the speed, n = K sqrt(T)");
    }

    String words() {
        return "curve " + points.stream().map(ConverterCurve::shown).collect(Collectors.joining(" "));
    }

    private static String shown(Point point) {
        return DecimalText.shortest(point.speedRatio()) + ":" + DecimalText.shortest(point.torqueRatio()) + ":"
                + k(point.capacity());
    }

    private static String k(CapacityFactor capacity) {
        String brief = DecimalText.significant(capacity.toRpmPerRootPoundFoot(), 10);
        boolean exact =
                CapacityFactor.ofRpmPerRootPoundFoot(Double.parseDouble(brief)).equals(capacity);
        return exact ? brief : DecimalText.shortest(capacity.toRpmPerRootPoundFoot());
    }
}
