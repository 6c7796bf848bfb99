package drivetrain.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import drivetrain.driveshaft.BeamLine;
import drivetrain.driveshaft.BeamMode;
import drivetrain.driveshaft.BeamSpan;
import drivetrain.driveshaft.ShaftMaterial;
import drivetrain.driveshaft.Tube;
import drivetrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.junit.jupiter.api.Test;

/**
 * Natural frequencies of stepped shafts against the symmetric eigenvalue solver of EJML (Efficient Java Matrix Library), which knows nothing of bands, on a model of
 * another kind: many short stiff links with lumped masses and rotary inertias, bending and shearing only between them.
 */
class BeamFrequenciesTest {

    private static final ShaftMaterial STEEL = ShaftMaterial.parse("modulus 205 GPa poisson 0.29 density 7850 kg/m3");
    private static final int LINKS = 240;

    private record Step(double length, Tube tube) {}

    @Test
    void aUniformTubeAgrees() {
        agree(List.of(new Step(1.3, Tube.parse("3 in x 0.083 in"))));
    }

    @Test
    void aTubeWithYokesAndSlipStubAgrees() {
        agree(List.of(
                new Step(0.07, Tube.solid(Length.ofMillimeters(55))),
                new Step(0.25, Tube.solid(Length.ofMillimeters(38))),
                new Step(0.95, Tube.parse("3 in x 0.083 in")),
                new Step(0.07, Tube.solid(Length.ofMillimeters(55)))));
    }

    @Test
    void aShaftOfTwoTubesAgrees() {
        agree(List.of(new Step(0.7, Tube.parse("4 in x 0.083 in")), new Step(0.5, Tube.parse("2 in x 0.120 in"))));
    }

    private static void agree(List<Step> steps) {
        BeamLine line = BeamLine.of(steps.stream()
                .map(step -> BeamSpan.of(Length.ofMeters(step.length()), step.tube(), STEEL))
                .toArray(BeamSpan[]::new));
        List<BeamMode> modes = line.modes(3);
        double[] lumped = frequencies(steps);
        for (int i = 0; i < 3; i++) {
            assertThat(modes.get(i).frequency().toHertz()).isCloseTo(lumped[i], withinPercentage(0.3));
        }
    }

    /** Nodes along the shaft, each with deflection w and slope p; between two of them the bending p2 - p1 and the shear (w2 - w1) / h - (p1 + p2) / 2. */
    private static double[] frequencies(List<Step> steps) {
        double total = steps.stream().mapToDouble(Step::length).sum();
        List<double[]> links = new ArrayList<>();
        for (Step step : steps) {
            int count = Math.max(2, (int) Math.round(LINKS * step.length() / total));
            double area = step.tube().area();
            double second = step.tube().secondMoment();
            double shear =
                    STEEL.shearCoefficient(step.tube()) * STEEL.shearModulus().toPascals() * area;
            for (int i = 0; i < count; i++) {
                links.add(new double[] {
                    step.length() / count,
                    STEEL.modulus().toPascals() * second,
                    shear,
                    STEEL.density().si() * area,
                    STEEL.density().si() * second
                });
            }
        }
        int nodes = links.size() + 1;
        DMatrixRMaj k = new DMatrixRMaj(2 * nodes, 2 * nodes);
        double[] mass = new double[2 * nodes];
        for (int i = 0; i < links.size(); i++) {
            double[] link = links.get(i);
            double h = link[0];
            spring(k, link[1] / h, new int[] {2 * i + 1, 2 * i + 3}, new double[] {-1, 1});
            spring(k, link[2] * h, new int[] {2 * i, 2 * i + 2, 2 * i + 1, 2 * i + 3}, new double[] {
                -1 / h, 1 / h, -0.5, -0.5
            });
            for (int end = 0; end < 2; end++) {
                mass[2 * (i + end)] += link[3] * h / 2;
                mass[2 * (i + end) + 1] += link[4] * h / 2;
            }
        }
        return lowest(k, mass, 2 * nodes);
    }

    private static void spring(DMatrixRMaj k, double stiffness, int[] at, double[] share) {
        for (int i = 0; i < at.length; i++) {
            for (int j = 0; j < at.length; j++) {
                k.add(at[i], at[j], stiffness * share[i] * share[j]);
            }
        }
    }

    /** Both ends pinned: their deflections left out; then M^-1/2 K M^-1/2. */
    private static double[] lowest(DMatrixRMaj k, double[] mass, int size) {
        List<Integer> free = new ArrayList<>();
        for (int i = 1; i < size; i++) {
            if (i != size - 2) {
                free.add(i);
            }
        }
        DMatrixRMaj s = new DMatrixRMaj(free.size(), free.size());
        for (int i = 0; i < free.size(); i++) {
            for (int j = 0; j < free.size(); j++) {
                s.set(i, j, k.get(free.get(i), free.get(j)) / Math.sqrt(mass[free.get(i)] * mass[free.get(j)]));
            }
        }
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(free.size(), false, true);
        assertThat(CommonOps_DDRM.elementMaxAbs(s)).isPositive();
        assertThat(eigen.decompose(s)).isTrue();
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < free.size(); i++) {
            values.add(Math.sqrt(eigen.getEigenvalue(i).getReal()) / (2 * Math.PI));
        }
        return values.stream()
                .sorted()
                .limit(3)
                .mapToDouble(Double::doubleValue)
                .toArray();
    }
}
