package drivetrain.assessment;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Outcome;
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

/** The questions about the road, of a package whose every question can be answered but the speedometer's. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class RoadBenchmark {

    private final Combination combination = Combination.resolve(
            Specification.empty()
                    .with(
                            Slot.VEHICLE,
                            "mass 2240 kg front 1270 kg rear 1720 kg drag 1.45 m2 wheelbase 2870 mm cg 770 mm split 53 %")
                    .with(Slot.ENGINE, "447 hp at 5700 rpm, 461 lb-ft at 4400 rpm, idle 600 rpm, max 6600 rpm")
                    .with(
                            Slot.TRANSMISSION,
                            "4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06 converter stall 2.0 stall-speed 2300 rpm lockup")
                    .with(Slot.TRANSFER, "1.00 2.72")
                    .with(Slot.REAR_AXLE, "41/11 ring-rating 5200 lb-ft shaft-rating 2900 lb-ft")
                    .with(Slot.FRONT_AXLE, "41/11")
                    .with(Slot.TIRE, "LT265/75R16 123/120R revs 655 rev/mile")
                    .cruisingAt("70 mph"),
            Catalog.empty());

    /** Every question, with road and load path. */
    @Benchmark
    public Assessment assessment() {
        return Assessment.of(combination);
    }

    /** From rest to 60 mph, and over a quarter mile. */
    @Benchmark
    public Outcome<SprintAnswer> sprint() {
        return SprintAnswer.to(combination, SprintAnswer.USUAL_TARGET);
    }

    /** The torque in every part in every gear. */
    @Benchmark
    public Outcome<LoadsAnswer> loads() {
        return LoadsAnswer.of(combination);
    }
}
