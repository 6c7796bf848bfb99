package drivetrain.planner;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The best 20 and the count of those that pass, beside the plain loop over every combination. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx256m")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class PlannerBenchmark {

    /** How many combinations there are. */
    @Param({"1000000", "100000000", "1000000000"})
    long combinations;

    private PackageShelf shelf = PackageShelf.of(1_000_000L);
    private Query query = shelf.query();
    private Query visiting = shelf.visitingQuery();
    private final Planner planner = Planner.onAllProcessors();
    private final Planner single = Planner.on(1);

    /** Lays the shelf out. */
    @Setup
    public void layOut() {
        shelf = PackageShelf.of(combinations);
        query = shelf.query();
        visiting = shelf.visitingQuery();
    }

    /** Only figures that say how they move. */
    @Benchmark
    public Selection planned() {
        return planner.select(query, Watch.PATIENT);
    }

    /** A figure of one's own, on one thread. */
    @Benchmark
    public Selection visitedByOneThread() {
        return single.select(visiting, Watch.PATIENT);
    }

    /** The loop that anybody would write. */
    @Benchmark
    public long plainLoop() {
        return PlainSearch.run(shelf);
    }
}
