package drivetrain.driveshaft;

import drivetrain.quantity.Frequency;
import drivetrain.quantity.Length;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The critical speed of a shaft with yokes and slip stub in some 40 elements: assembled and solved on the band, and by a dense solver. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class BeamBenchmark {

    private static final ShaftMaterial STEEL = ShaftMaterial.parse("steel");
    private static final Tube YOKE = Tube.solid(Length.ofMillimeters(55));

    private final BeamLine line = BeamLine.of(
            span(0.07, YOKE),
            span(0.25, Tube.solid(Length.ofMillimeters(38))),
            span(0.91, Tube.parse("3 in x 0.083 in")),
            span(0.07, YOKE));
    private final BeamMesh mesh = BeamMesh.of(line);
    private final Tube tube = Tube.parse("3 in x 0.083 in");
    private final Length length = Length.ofMeters(1.3);

    private static BeamSpan span(double meters, Tube tube) {
        return BeamSpan.of(Length.ofMeters(meters), tube, STEEL);
    }

    /** Cuts the shaft, fills the matrices and solves for its first mode. */
    @Benchmark
    public Frequency firstMode() {
        return line.firstFrequency();
    }

    /** Cuts the shaft, fills the matrices and solves for three modes with their shapes. */
    @Benchmark
    public List<BeamMode> threeModes() {
        return line.modes(3);
    }

    /** Fills the matrices only. */
    @Benchmark
    public Object assembly() {
        return BeamMesh.of(line);
    }

    /** The closed form for a tube alone. */
    @Benchmark
    public Object closedForm() {
        return CriticalSpeed.ofUniform(tube, STEEL, length);
    }

    /** Solves the same matrices, already filled, by Cholesky and a full eigenvalue decomposition. */
    @Benchmark
    public double dense() {
        RealMatrix lower = new CholeskyDecomposition(dense(mesh.stiffness()), 1e-12, 0.0).getL();
        RealMatrix inverse = new LUDecomposition(lower).getSolver().getInverse();
        RealMatrix s = inverse.multiply(dense(mesh.mass())).multiply(inverse.transpose());
        return new EigenDecomposition(s.add(s.transpose())).getRealEigenvalue(0);
    }

    private static RealMatrix dense(BeamMatrix banded) {
        RealMatrix dense = new Array2DRowRealMatrix(banded.size(), banded.size());
        for (int i = 0; i < banded.size(); i++) {
            for (int j = Math.max(0, i - 3); j < Math.min(banded.size(), i + 4); j++) {
                dense.setEntry(i, j, banded.get(i, j));
            }
        }
        return dense;
    }
}
