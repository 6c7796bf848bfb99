package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

class BeamMatrixTest {

    private static final Random RANDOM = new Random(1_966L);

    private static BeamMatrix definite(int size) {
        BeamMatrix matrix = new BeamMatrix(size);
        for (int i = 0; i < size; i++) {
            matrix.add(i, i, 8.0 + RANDOM.nextDouble());
            for (int d = 1; d < BeamMatrix.WIDTH && d <= i; d++) {
                matrix.add(i - d, i, RANDOM.nextDouble() - 0.5);
            }
        }
        return matrix;
    }

    static RealMatrix dense(BeamMatrix banded) {
        RealMatrix dense = new Array2DRowRealMatrix(banded.size(), banded.size());
        for (int i = 0; i < banded.size(); i++) {
            for (int j = 0; j < banded.size(); j++) {
                dense.setEntry(i, j, banded.get(i, j));
            }
        }
        return dense;
    }

    @Test
    void multipliesLikeAFullMatrix() {
        for (int size = 1; size < 12; size++) {
            BeamMatrix matrix = definite(size);
            double[] x = RANDOM.doubles(size).toArray();
            double[] y = new double[size];

            matrix.times(x, y);

            assertThat(y).containsExactly(dense(matrix).operate(x), within(1e-13));
        }
    }

    @Test
    void solvesLikeAFullMatrix() {
        for (int size = 1; size < 12; size++) {
            BeamMatrix matrix = definite(size);
            double[] b = RANDOM.doubles(size).toArray();
            double[] x = b.clone();

            matrix.factorized(0.0, matrix).solve(x);

            double[] full = new LUDecomposition(dense(matrix))
                    .getSolver()
                    .solve(new org.apache.commons.math3.linear.ArrayRealVector(b))
                    .toArray();
            assertThat(x).containsExactly(full, within(1e-13));
        }
    }

    @Test
    void countsTheEigenvaluesBelowAShift() {
        BeamMatrix matrix = definite(9);
        BeamMatrix one = new BeamMatrix(9);
        for (int i = 0; i < 9; i++) {
            one.add(i, i, 1.0);
        }
        double[] values = new EigenDecomposition(dense(matrix)).getRealEigenvalues();
        for (double shift = 6.0; shift < 11.0; shift += 0.1) {
            double limit = shift;
            long below = java.util.Arrays.stream(values).filter(v -> v < limit).count();

            assertThat(matrix.factorized(shift, one).negativePivots()).isEqualTo((int) below);
        }
    }

    @Test
    void doesNotDivideByZeroWhereAShiftHitsAnEigenvalue() {
        BeamMatrix one = new BeamMatrix(1);
        one.add(0, 0, 1.0);
        double[] x = {1.0};

        one.factorized(1.0, one).solve(x);

        assertThat(x[0]).isFinite();
        assertThat(one.get(0, 0)).isEqualTo(1.0);
        assertThat(definite(9).get(0, 8)).isZero();
    }

    @Test
    void isolatesAnUnknown() {
        BeamMatrix matrix = definite(9);

        matrix.isolate(4, 2.0);

        for (int i = 0; i < 9; i++) {
            assertThat(matrix.get(4, i)).isEqualTo(i == 4 ? 2.0 : 0.0);
        }
    }
}
