package drivetrain.assessment;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.fuel.FuelSupply;
import drivetrain.fuel.SupplyPoint;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The whole answer about a fuel supply, and one meeting of pump and lines in it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class SupplyBenchmark {

    private final Combination combination = Combination.resolve(
            Specification.empty()
                    .with(Slot.ENGINE, "447 hp at 5700 rpm, 461 lb-ft at 4400 rpm, idle 600 rpm, max 6600 rpm")
                    .with(Slot.FUEL, "E10")
                    .with(
                            Slot.FUEL_PUMP,
                            "13.5 V, 374 L/h at 0 psi 7 A, 331 L/h at 45 psi 11 A, 281 L/h at 80 psi 15 A")
                    .with(
                            Slot.FEED_LINE,
                            "4.6 m of 7.75 mm tube, filter 6 kPa at 200 L/h, 1.2 m of 7.9 mm hose, 4 elbows")
                    .with(Slot.INJECTORS, "8 x 42 lb/h at 43.5 psi")
                    .with(
                            Slot.FUEL_SYSTEM,
                            "return 58 psi, lift 0.5 m, 13.5 V, wire 5 m of AWG 10, fuel at 40 degC, elevation 600 m"),
            Catalog.empty());
    private final FuelSupply supply = SupplyAnswer.of(combination).orThrow().supply();

    /** Everything that the word {@code supply} answers. */
    @Benchmark
    public SupplyAnswer answer() {
        return SupplyAnswer.of(combination).orThrow();
    }

    /** One operating point. */
    @Benchmark
    public SupplyPoint capacity() {
        return supply.capacity().orThrow();
    }
}
