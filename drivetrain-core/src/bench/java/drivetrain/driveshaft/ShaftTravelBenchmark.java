package drivetrain.driveshaft;

import drivetrain.quantity.AngularSpeed;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A travel sweep of some 1,000 positions on each kind of suspension, the motion at one speed, and the solved pinion slope. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class ShaftTravelBenchmark {

    private static final String REST = ", pinion 260 mm ahead 30 mm above, bump 90 mm, droop 120 mm, track 1490 mm";
    /** 32 heights of one wheel with 32 of the other are 1,024 positions. */
    private static final int HEIGHTS = 32;

    /** What guides the axle. */
    @Param({"arms", "links", "leaves"})
    public String guide = "links";

    private final InstalledShaft installed = new InstalledShaft(
            ShaftPlace.REAR,
            Driveshaft.parse("tube 76.2 mm x 2.1 mm of steel, yokes in phase, joints to 30 deg, slip 24 teeth"),
            LineSurvey.parse("output 3 deg down, shaft 1100 mm 9 deg down 20 mm left, pinion 4 deg down")
                    .line(ShaftPlace.REAR));

    private Suspension suspension() {
        return Suspension.parse(
                switch (guide) {
                    case "arms" -> "radius arms 880 mm ahead 40 mm below 640 mm apart" + REST;
                    case "leaves" -> "leaf springs 560 mm ahead 25 mm below 1000 mm apart" + REST;
                    default ->
                        "four links, lower from 20 mm behind 90 mm below 900 mm apart to 780 mm ahead 110 mm below 700 mm apart,"
                                + " upper from 40 mm ahead 150 mm above 400 mm apart to 560 mm ahead 120 mm above 400 mm apart"
                                + REST;
                });
    }

    private Suspension parsed = suspension();

    /** Reads the suspension once for each kind. */
    @org.openjdk.jmh.annotations.Setup
    public void read() {
        parsed = suspension();
    }

    /** The sweep. */
    @Benchmark
    public ShaftTravel sweep() {
        return ShaftTravel.of(installed, parsed, HEIGHTS);
    }

    /** Angles, residual and accelerations at one speed. */
    @Benchmark
    public LineMotion motion() {
        return installed.motionAt(AngularSpeed.ofRpm(2500.0));
    }

    /** The pinion slope with its range. */
    @Benchmark
    public PinionSlope pinionSlope() {
        return PinionSlope.of(installed, AngularSpeed.ofRpm(2500.0), ShaftHouse.packed());
    }
}
