package drivetrain.road;

import drivetrain.quantity.Speed;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Where the next gear pulls as hard as the present one, so that shifting there costs no force.
 *
 * @param from the gear that is left
 * @param to the gear that is taken
 * @param speed the road speed
 * @param crossing true if the forces are equal there; false if the lower gear pulls harder up to its end, so that the shift comes at the engine's highest
 *     speed
 */
public record ShiftPoint(String from, String to, Speed speed, boolean crossing) {

    private static final int SAMPLES = 64;
    private static final double SPEED_TOLERANCE = 1e-9;
    private static final int MOST_EVALUATIONS = 100;

    /**
     * Finds the best shift points.
     *
     * @param curves the driving force in each gear, first gear first
     * @return one point for each upshift
     */
    public static List<ShiftPoint> of(List<ForceCurve> curves) {
        List<ShiftPoint> points = new ArrayList<>();
        for (int i = 0; i + 1 < curves.size(); i++) {
            points.add(between(curves.get(i), curves.get(i + 1)));
        }
        return List.copyOf(points);
    }

    private static ShiftPoint between(ForceCurve lower, ForceCurve upper) {
        UnivariateFunction lead = speed -> lower.newtonsAt(speed) - upper.newtonsAt(speed);
        double start = Math.max(lower.lowest().si(), upper.lowest().si());
        double end = lower.highest().si();
        if (start < end && lead.value(end) < 0.0) {
            double step = (end - start) / SAMPLES;
            for (int i = SAMPLES - 1; i >= 0; i--) {
                double low = start + i * step;
                if (lead.value(low) >= 0.0) {
                    double speed = new BrentSolver(SPEED_TOLERANCE).solve(MOST_EVALUATIONS, lead, low, low + step);
                    return new ShiftPoint(lower.label(), upper.label(), Speed.ofMetersPerSecond(speed), true);
                }
            }
            return new ShiftPoint(lower.label(), upper.label(), Speed.ofMetersPerSecond(start), true);
        }
        return new ShiftPoint(lower.label(), upper.label(), lower.highest(), false);
    }
}
