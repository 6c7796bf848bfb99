package drivetrain.road;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Power;
import drivetrain.quantity.Speed;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The highest speed that a vehicle holds in one gear: where the driving force meets the resistance, where the gearing ends, or where a speed limiter holds it.
 *
 * @param label the gear
 * @param speed the speed
 * @param limit what sets it
 * @param power the power that it takes at the wheels
 */
public record TopSpeed(String label, Speed speed, Limit limit, Power power) {

    private static final int SAMPLES = 48;
    private static final double SPEED_TOLERANCE = 1e-9;
    private static final int MOST_EVALUATIONS = 100;

    /** What sets a top speed. */
    public enum Limit {
        /** The engine has no more force than the resistance takes. */
        POWER("power"),
        /** The engine reaches its highest speed with force left over. */
        GEARING("gearing"),
        /** The speed limiter holds the vehicle with force left over. */
        LIMITER("speed limiter");

        private final String label;

        Limit(String label) {
            this.label = label;
        }

        /**
         * Returns the word for it.
         *
         * @return the label, in lower case
         */
        public String label() {
            return label;
        }
    }

    /**
     * Finds the top speed in one gear.
     *
     * @param curve the driving force
     * @param load the resistance
     * @return the top speed, or that the gear cannot hold any speed
     */
    public static Outcome<TopSpeed> of(ForceCurve curve, RoadLoad load) {
        return of(curve, load, Optional.empty());
    }

    /**
     * Finds the top speed in one gear under a speed limiter.
     *
     * @param curve the driving force
     * @param load the resistance
     * @param limiter the road speed above which the engine is held back, or empty
     * @return the top speed, or that the gear cannot hold any speed
     */
    public static Outcome<TopSpeed> of(ForceCurve curve, RoadLoad load, Optional<Speed> limiter) {
        boolean isLimited =
                limiter.filter(held -> held.isLessThan(curve.highest())).isPresent();
        Speed end = isLimited ? limiter.orElseThrow() : curve.highest();
        if (end.isLessThan(curve.lowest())) {
            return Outcome.notEvaluated(
                    "the speed limiter holds the vehicle below the slowest speed of " + curve.label());
        }
        UnivariateFunction reserve = speed -> curve.newtonsAt(speed) - load.totalNewtons(speed);
        double high = end.si();
        double step = (high - curve.lowest().si()) / SAMPLES;
        if (reserve.value(high) >= 0.0) {
            return Outcome.of(at(curve, load, high, isLimited ? Limit.LIMITER : Limit.GEARING));
        }
        for (int i = SAMPLES - 1; i >= 0; i--) {
            double low = curve.lowest().si() + i * step;
            if (reserve.value(low) >= 0.0) {
                double held = new BrentSolver(SPEED_TOLERANCE).solve(MOST_EVALUATIONS, reserve, low, low + step);
                return Outcome.of(at(curve, load, held, Limit.POWER));
            }
        }
        return Outcome.notEvaluated(
                "the engine cannot hold any speed in " + curve.label() + " against this resistance");
    }

    private static TopSpeed at(ForceCurve curve, RoadLoad load, double metersPerSecond, Limit limit) {
        Speed speed = Speed.ofMetersPerSecond(metersPerSecond);
        return new TopSpeed(curve.label(), speed, limit, load.powerAtWheels(speed));
    }

    /**
     * Finds the top speed over all gears.
     *
     * @param curves the driving force in each gear
     * @param load the resistance
     * @return the fastest, or that no gear holds any speed
     */
    public static Outcome<TopSpeed> fastest(List<ForceCurve> curves, RoadLoad load) {
        Optional<TopSpeed> fastest = curves.stream()
                .map(curve -> of(curve, load).value())
                .flatMap(Optional::stream)
                .max(Comparator.comparing(TopSpeed::speed));
        return Outcome.of(fastest, "the engine cannot hold any speed in any gear against this resistance");
    }
}
