package drivetrain.assessment;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.quantity.Speed;
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

/** A full assessment of a combination whose every question can be answered but the speedometer's, and one cruise answer of it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class AssessmentBenchmark {

    private final Combination combination = Combination.resolve(
            Specification.empty()
                    .with(Slot.VEHICLE, "mass 2240 kg front 1270 kg rear 1720 kg")
                    .with(Slot.ENGINE, "447 hp at 5700 rpm, 461 lb-ft at 4400 rpm, idle 600 rpm, max 6600 rpm")
                    .with(Slot.TRANSMISSION, "4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06 converter stall 2.0 lockup")
                    .with(Slot.TRANSFER, "1.00 2.72")
                    .with(Slot.REAR_AXLE, "41/11")
                    .with(Slot.FRONT_AXLE, "41/11")
                    .with(Slot.TIRE, "LT265/75R16 123/120R revs 655 rev/mile")
                    .cruisingAt("70 mph"),
            Catalog.empty());
    private final Combination whole = Combination.resolve(
            combination
                    .specification()
                    .with(
                            Slot.REAR_SHAFT,
                            "tube 76.2 mm x 2.11 mm of steel-1020-drawn, yokes 1.3 kg 60 mm long in phase, joints rated 4600 N\u00B7m to 25 deg,"
                                    + " slip 16 teeth 36 mm across 150 mm long 90 mm engaged 45 mm least 40 mm free")
                    .with(
                            Slot.REAR_LINE,
                            "output 3.2 deg down, shaft 1290 mm 5.2 deg down 12 mm left, pinion 3 deg down")
                    .with(
                            Slot.REAR_SUSPENSION,
                            "four links, lower from 10 mm behind 80 mm below 960 mm apart to 760 mm ahead 40 mm below 960 mm apart,"
                                    + " upper from 60 mm ahead 140 mm above 700 mm apart to 590 mm ahead 130 mm above 700 mm apart,"
                                    + " pinion 285 mm ahead 35 mm above, bump 85 mm, droop 110 mm, track 1490 mm")
                    .with(
                            Slot.FRONT_SHAFT,
                            "tube 50.8 mm x 3.05 mm of steel, yokes 1.1 kg 55 mm long in phase, joints rated 3400 N\u00B7m to 25 deg,"
                                    + " double joint at output to 28 deg, slip 16 teeth 36 mm across 120 mm long 85 mm engaged 45 mm free")
                    .with(Slot.FRONT_LINE, "output 2 deg up, shaft 640 mm 7 deg down 10 mm right, pinion 6.2 deg down")
                    .with(
                            Slot.FRONT_SUSPENSION,
                            "radius arms 850 mm behind 15 mm above 720 mm apart, pinion 240 mm behind 25 mm above 190 mm right,"
                                    + " bump 80 mm, droop 100 mm, track 1490 mm")
                    .with(Slot.FUEL, "E10")
                    .with(
                            Slot.FUEL_PUMP,
                            "13.5 V, 374 L/h at 0 psi 7 A, 331 L/h at 45 psi 11 A, 281 L/h at 80 psi 15 A, 200 L/h at 120 psi 19 A")
                    .with(
                            Slot.FEED_LINE,
                            "4.6 m of 7.75 mm tube, filter 6 kPa at 200 L/h, 1.2 m of 7.9 mm hose, 4 elbows")
                    .with(Slot.RETURN_LINE, "5 m of 8 mm tube")
                    .with(Slot.INJECTORS, "8 x 42 lb/h at 43.5 psi")
                    .with(
                            Slot.FUEL_SYSTEM,
                            "return 58 psi, lift 0.5 m, 13.8 V, low 12.4 V, wire 5 m of AWG 10, fuel at 40 degC, elevation 600 m")
                    .with(Slot.TANK, "90 L, usable 84 L, canister 80 g, fill 40 %, day 20 degC to 34 degC"),
            Catalog.empty());
    private final Speed speed = Speed.ofMilesPerHour(65.0);

    /** Every question. */
    @Benchmark
    public Assessment assessment() {
        return Assessment.of(combination);
    }

    /** Every question of a package with two driveshafts on their suspensions and a fuel supply. */
    @Benchmark
    public Assessment wholeAssessment() {
        return Assessment.of(whole);
    }

    /** The one question that is asked on the phone. */
    @Benchmark
    public CruiseAnswer cruise() {
        return CruiseAnswer.at(combination, speed, GearChoice.TOP).orThrow();
    }
}
