package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularSpeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Which slope of the pinion makes the line cancel best: the axle is turned about the pinion's joint center, everything else stays.
 *
 * @param present the slope now, positive where the pinion's axis falls toward the axle
 * @param best the slope with the least residual; of two that are as good, the nearer one
 * @param residual the equivalent residual angle at the best slope
 * @param least the least slope of the range about the best one in which every limit is kept at a shaft speed; empty if none keeps them
 * @param most the greatest slope of that range
 */
public record PinionSlope(Angle present, Angle best, Angle residual, Optional<Angle> least, Optional<Angle> most) {

    private static final double REACH = Math.toRadians(25.0);
    private static final double STEP = Math.toRadians(0.25);
    private static final double AS_GOOD = Math.toRadians(0.05);
    private static final double ACCURACY = 1e-8;
    private static final int MOST_TRIES = 200;

    /**
     * Solves for the slope.
     *
     * @param installed the shaft in its line
     * @param speed the shaft speed at which the limits are held for the range
     * @param house the limits of the shop
     * @return the slopes
     */
    public static PinionSlope of(InstalledShaft installed, AngularSpeed speed, ShaftHouse house) {
        Turned turned = new Turned(installed);
        double best = best(turned);
        DoubleUnaryOperator use = slope -> LineChecks.worstUse(turned.at(slope), speed, house);
        Optional<Angle> least = edge(use, best, -STEP);
        Optional<Angle> most = edge(use, best, STEP);
        return new PinionSlope(
                Angle.ofRadians(turned.present()),
                Angle.ofRadians(best),
                Angle.ofRadians(turned.residual(best)),
                least,
                most);
    }

    /** The line with its pinion at other slopes, its turn in plan view kept. */
    private static final class Turned {

        private final InstalledShaft installed;
        private final double turn;
        private final double present;

        Turned(InstalledShaft installed) {
            this.installed = installed;
            Vector3D axis = installed.line().pinionAxis();
            this.turn = Math.atan2(axis.getY(), axis.getX() * installed.place().forward());
            this.present = -Math.asin(axis.getZ());
        }

        double present() {
            return present;
        }

        InstalledShaft at(double slope) {
            Vector3D axis = AxisDirection.vector(slope, turn, installed.place());
            return new InstalledShaft(
                    installed.place(), installed.shaft(), installed.line().withPinionAxis(axis));
        }

        double residual(double slope) {
            return at(slope).residual().radians();
        }
    }

    private static double best(Turned turned) {
        List<Double> candidates = new ArrayList<>();
        double start = turned.present() - REACH;
        int steps = (int) Math.round(2.0 * REACH / STEP);
        double before = turned.residual(start - STEP);
        double here = turned.residual(start);
        for (int i = 0; i <= steps; i++) {
            double slope = start + i * STEP;
            double next = turned.residual(slope + STEP);
            if (here <= before && here <= next) {
                candidates.add(refined(turned, slope));
            }
            before = here;
            here = next;
        }
        candidates.add(turned.present());
        double lowest = candidates.stream().mapToDouble(turned::residual).min().orElseThrow();
        double best = turned.present();
        double nearest = Double.POSITIVE_INFINITY;
        for (double slope : candidates) {
            double way = Math.abs(slope - turned.present());
            if (turned.residual(slope) <= lowest + AS_GOOD && way < nearest) {
                best = slope;
                nearest = way;
            }
        }
        return best;
    }

    private static double refined(Turned turned, double slope) {
        return new BrentOptimizer(1e-10, ACCURACY)
                .optimize(
                        new MaxEval(MOST_TRIES),
                        GoalType.MINIMIZE,
                        new UnivariateObjectiveFunction(turned::residual),
                        new SearchInterval(slope - STEP, slope + STEP, slope))
                .getPoint();
    }

    /** Where the limits stop being kept, walking from the best slope; empty if they are not kept there. */
    private static Optional<Angle> edge(DoubleUnaryOperator use, double best, double step) {
        if (use.applyAsDouble(best) > 1.0) {
            return Optional.empty();
        }
        double inside = best;
        for (double way = Math.abs(step); way < REACH; way += Math.abs(step)) {
            double outside = best + Math.signum(step) * way;
            if (use.applyAsDouble(outside) > 1.0) {
                double low = Math.min(inside, outside);
                double high = Math.max(inside, outside);
                double root =
                        new BrentSolver(ACCURACY).solve(MOST_TRIES, slope -> use.applyAsDouble(slope) - 1.0, low, high);
                return Optional.of(Angle.ofRadians(root));
            }
            inside = outside;
        }
        return Optional.of(Angle.ofRadians(inside));
    }
}
