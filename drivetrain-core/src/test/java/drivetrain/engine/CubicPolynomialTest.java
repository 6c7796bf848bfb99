package drivetrain.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.analysis.solvers.LaguerreSolver;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

class CubicPolynomialTest {

    private static CubicPolynomial withRoots(double scale, double a, double b, double c) {
        return new CubicPolynomial(-scale * a * b * c, scale * (a * b + a * c + b * c), -scale * (a + b + c), scale);
    }

    private static List<Double> roots(CubicPolynomial polynomial) {
        List<Double> found = new ArrayList<>();
        polynomial.roots(found::add);
        return found;
    }

    private static List<Double> stationary(CubicPolynomial polynomial) {
        List<Double> found = new ArrayList<>();
        polynomial.stationaryPoints(found::add);
        return found;
    }

    @Test
    void findsThreeRootsInRisingOrder() {
        List<Double> found = roots(withRoots(7.0, 0.8, 0.1, 0.35));
        assertThat(found).hasSize(3).isSorted();
        assertThat(found.get(0)).isCloseTo(0.1, within(1e-14));
        assertThat(found.get(1)).isCloseTo(0.35, within(1e-14));
        assertThat(found.get(2)).isCloseTo(0.8, within(1e-14));
    }

    @Test
    void leavesOutRootsBeyondTheInterval() {
        assertThat(roots(withRoots(1.0, -0.5, 0.25, 3.0))).hasSize(1);
        assertThat(roots(withRoots(1.0, -0.5, -0.2, 3.0))).isEmpty();
    }

    @Test
    void findsTheRootOfALineAndOfAParabola() {
        assertThat(roots(new CubicPolynomial(-1.0, 4.0, 0.0, 0.0))).containsExactly(0.25);
        assertThat(roots(new CubicPolynomial(-0.25, 0.0, 1.0, 0.0)))
                .hasSize(1)
                .first()
                .isEqualTo(0.5);
        assertThat(roots(new CubicPolynomial(3.0, 0.0, 0.0, 0.0))).isEmpty();
    }

    @Test
    void findsStationaryPointsOfEveryDegree() {
        assertThat(stationary(new CubicPolynomial(0.0, 0.1875, -0.5, 1.0 / 3.0)))
                .containsExactly(0.25, 0.75);
        assertThat(stationary(new CubicPolynomial(0.0, -1.0, 1.0, 0.0))).containsExactly(0.5);
        assertThat(stationary(new CubicPolynomial(5.0, 1.0, 0.0, 0.0))).isEmpty();
        assertThat(stationary(new CubicPolynomial(5.0, 0.0, 0.0, 0.0))).isEmpty();
        assertThat(stationary(new CubicPolynomial(0.0, 1.0, 0.0, 1.0))).isEmpty();
    }

    /** Random cubics against the Laguerre solver of a general-purpose library. */
    @Test
    void agreesWithAGeneralPurposeSolver() {
        Random random = new Random(11L);
        LaguerreSolver solver = new LaguerreSolver();
        for (int k = 0; k < 500; k++) {
            CubicPolynomial polynomial = new CubicPolynomial(
                    random.nextDouble() - 0.5,
                    random.nextDouble() - 0.5,
                    random.nextDouble() - 0.5,
                    random.nextDouble() + 0.1);
            List<Double> expected = new ArrayList<>();
            double[] coefficients = {polynomial.c0(), polynomial.c1(), polynomial.c2(), polynomial.c3()};
            for (Complex root : solver.solveAllComplex(coefficients, 0.3)) {
                if (Math.abs(root.getImaginary()) < 1e-9 && root.getReal() >= 0.0 && root.getReal() <= 1.0) {
                    expected.add(root.getReal());
                }
            }
            expected.sort(null);
            List<Double> found = roots(polynomial);
            assertThat(found).hasSameSizeAs(expected);
            for (int i = 0; i < found.size(); i++) {
                assertThat(found.get(i)).isCloseTo(expected.get(i), within(1e-7));
                assertThat(polynomial.at(found.get(i))).isCloseTo(0.0, within(1e-14));
            }
        }
    }
}
