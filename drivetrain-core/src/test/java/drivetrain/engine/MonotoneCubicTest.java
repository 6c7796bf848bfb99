package drivetrain.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.refusal.RefusedException;
import java.util.Random;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MonotoneCubicTest {

    private static final long SEED = 20240607L;
    private static final int CURVES = 500;
    private static final int STEPS = 40;

    private final Random random = new Random(SEED);

    private double[] abscissas(int n) {
        double[] x = new double[n];
        x[0] = 100.0 * random.nextDouble();
        for (int i = 1; i < n; i++) {
            x[i] = x[i - 1] + 0.01 + 50.0 * random.nextDouble();
        }
        return x;
    }

    private double[] ordinates(int n) {
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            y[i] = i > 0 && random.nextInt(5) == 0 ? y[i - 1] : 1000.0 * random.nextDouble();
        }
        return y;
    }

    @Test
    void passesThroughEveryPoint() {
        for (int k = 0; k < CURVES; k++) {
            int n = 2 + random.nextInt(12);
            double[] x = abscissas(n);
            double[] y = ordinates(n);
            MonotoneCubic curve = MonotoneCubic.of(x, y);
            for (int i = 0; i < n; i++) {
                assertThat(curve.valueAt(x[i])).isEqualTo(y[i]);
            }
            assertThat(curve.first()).isEqualTo(x[0]);
            assertThat(curve.last()).isEqualTo(x[n - 1]);
        }
    }

    @Test
    void neverOvershootsThePointsOnEitherSide() {
        for (int k = 0; k < CURVES; k++) {
            int n = 2 + random.nextInt(12);
            double[] x = abscissas(n);
            double[] y = ordinates(n);
            MonotoneCubic curve = MonotoneCubic.of(x, y);
            for (int i = 0; i < n - 1; i++) {
                double sign = Math.signum(y[i + 1] - y[i]);
                double before = y[i];
                for (int j = 1; j <= STEPS; j++) {
                    double value = curve.valueAt(x[i] + (x[i + 1] - x[i]) * Math.min(1.0, (double) j / STEPS));
                    assertThat(sign * (value - before)).isGreaterThanOrEqualTo(-1e-9);
                    before = value;
                }
                assertThat(before).isCloseTo(y[i + 1], within(1e-9));
            }
        }
    }

    @Test
    void hasAContinuousSlope() {
        for (int k = 0; k < CURVES; k++) {
            int n = 3 + random.nextInt(10);
            double[] x = abscissas(n);
            MonotoneCubic curve = MonotoneCubic.of(x, ordinates(n));
            for (int i = 1; i < n - 1; i++) {
                double left = curve.slopeAt(Math.nextDown(x[i]));
                double right = curve.slopeAt(x[i]);
                assertThat(left).isCloseTo(right, within(1e-6 * (1.0 + Math.abs(right))));
            }
        }
    }

    @Test
    void isExactOnALine() {
        double[] x = {1000.0, 1700.0, 2500.0, 4100.0, 6000.0};
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            y[i] = 12.5 - 0.003 * x[i];
        }
        MonotoneCubic curve = MonotoneCubic.of(x, y);
        for (double at = 1000.0; at <= 6000.0; at += 125.0) {
            assertThat(curve.valueAt(at)).isCloseTo(12.5 - 0.003 * at, within(1e-13));
            assertThat(curve.slopeAt(at)).isCloseTo(-0.003, within(1e-15));
        }
    }

    /** On a line every sound interpolation is the same; the general-purpose library's natural and Akima splines must agree there. */
    @Test
    void agreesWithAGeneralPurposeLibraryOnALine() {
        double[] x = {1.0, 2.0, 4.0, 7.0, 11.0};
        double[] y = {3.0, 5.0, 9.0, 15.0, 23.0};
        MonotoneCubic curve = MonotoneCubic.of(x, y);
        var natural = new SplineInterpolator().interpolate(x, y);
        var akima = new AkimaSplineInterpolator().interpolate(x, y);
        for (double at = 1.0; at < 11.0; at += 0.37) {
            assertThat(curve.valueAt(at)).isCloseTo(natural.value(at), within(1e-12));
            assertThat(curve.valueAt(at)).isCloseTo(akima.value(at), within(1e-12));
        }
    }

    @Test
    void smoothDataApproachTheirFunctionWithTheThirdPowerOfTheSpacing() {
        assertThat(worstErrorOfSine(80)).isLessThan(worstErrorOfSine(20) / 16.0);
    }

    private static double worstErrorOfSine(int pieces) {
        double[] x = new double[pieces + 1];
        double[] y = new double[pieces + 1];
        for (int i = 0; i <= pieces; i++) {
            x[i] = 0.1 + 1.2 * i / pieces; // sine rises all the way
            y[i] = Math.sin(x[i]);
        }
        MonotoneCubic curve = MonotoneCubic.of(x, y);
        double worst = 0.0;
        for (double at = 0.1; at < 1.3; at += 0.0007) {
            worst = Math.max(worst, Math.abs(curve.valueAt(at) - Math.sin(at)));
        }
        return worst;
    }

    @Test
    void highestIsTheHighestPoint() {
        for (int k = 0; k < CURVES; k++) {
            int n = 2 + random.nextInt(12);
            double[] y = ordinates(n);
            MonotoneCubic curve = MonotoneCubic.of(abscissas(n), y);
            double most = java.util.Arrays.stream(y).max().orElseThrow();
            assertThat(curve.highest().y()).isEqualTo(most);
            assertThat(curve.valueAt(curve.highest().x()))
                    .isEqualTo(curve.highest().y());
        }
    }

    @Test
    void highestProductIsStationaryAndNoSampleExceedsIt() {
        for (int k = 0; k < CURVES; k++) {
            int n = 2 + random.nextInt(12);
            double[] x = abscissas(n);
            MonotoneCubic curve = MonotoneCubic.of(x, ordinates(n));
            MonotoneCubic.Point top = curve.highestProduct();
            double most = top.x() * top.y();
            for (int j = 0; j <= 1000; j++) {
                double at = Math.min(curve.last(), x[0] + (curve.last() - x[0]) * j / 1000.0);
                assertThat(at * curve.valueAt(at)).isLessThanOrEqualTo(most * (1.0 + 1e-12));
            }
        }
    }

    /** A torque curve of invented figures whose power peaks inside an interval, against the Brent optimizer of a general-purpose library. */
    @Test
    void highestProductAgreesWithAGeneralPurposeOptimizer() {
        MonotoneCubic curve = MonotoneCubic.of(
                new double[] {1000.0, 2500.0, 4100.0, 5000.0, 5700.0, 6600.0},
                new double[] {310.0, 400.0, 460.0, 435.0, 387.0, 300.0});
        var found = new BrentOptimizer(1e-10, 1e-12)
                .optimize(
                        new UnivariateObjectiveFunction(n -> n * curve.valueAt(n)),
                        new SearchInterval(5000.0, 6600.0),
                        GoalType.MAXIMIZE,
                        new MaxEval(1000));
        assertThat(curve.highestProduct().x()).isCloseTo(found.getPoint(), within(0.01));
        double slope = curve.highestProduct().y()
                + curve.highestProduct().x()
                        * curve.slopeAt(curve.highestProduct().x());
        assertThat(slope).isCloseTo(0.0, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.999, 4.001, Double.NaN, Double.POSITIVE_INFINITY})
    void rejectsAbscissasOutsideThePoints(double at) {
        MonotoneCubic curve = MonotoneCubic.of(new double[] {1.0, 2.0, 4.0}, new double[] {1.0, 3.0, 2.0});
        assertThatThrownBy(() -> curve.valueAt(at))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("1 to 4");
        assertThatThrownBy(() -> curve.slopeAt(at)).isInstanceOf(RefusedException.class);
    }

    @Test
    void rejectsPointsThatAreNoCurve() {
        assertRefused(new double[] {1.0}, new double[] {1.0}, "at least 2 points");
        assertRefused(new double[] {1.0, 2.0}, new double[] {1.0}, "2 abscissas, 1 ordinates");
        assertRefused(new double[] {1.0, 1.0}, new double[] {1.0, 2.0}, "strictly increasing");
        assertRefused(new double[] {2.0, 1.0}, new double[] {1.0, 2.0}, "strictly increasing");
        assertRefused(new double[] {1.0, Double.NaN}, new double[] {1.0, 2.0}, "not finite");
        assertRefused(new double[] {1.0, 2.0}, new double[] {Double.POSITIVE_INFINITY, 2.0}, "not finite");
    }

    private static void assertRefused(double[] x, double[] y, String part) {
        assertThatThrownBy(() -> MonotoneCubic.of(x, y))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining(part);
    }

    @Test
    void keepsItsOwnCopyOfThePoints() {
        double[] y = {1.0, 3.0, 2.0};
        MonotoneCubic curve = MonotoneCubic.of(new double[] {1.0, 2.0, 4.0}, y);
        y[1] = 99.0;
        assertThat(curve.valueAt(2.0)).isEqualTo(3.0);
    }
}
