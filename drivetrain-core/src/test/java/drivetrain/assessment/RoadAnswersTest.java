package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.gearing.Converter;
import drivetrain.gearing.Range;
import drivetrain.quantity.Speed;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.RefusedException;
import drivetrain.road.DriveLayout;
import drivetrain.road.Grade;
import drivetrain.road.Surface;
import drivetrain.road.TopSpeed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoadAnswersTest {

    private static final Speed ROAD = Speed.ofMilesPerHour(65.0);
    private static final Grade SIX = Grade.ofPercent(6.0);
    private static final Specification TOURER = Builds.TOURER;
    /** A tourer whose vehicle states all that the road needs, as one types it. */
    private static final Specification TYPED = TOURER.with(
            Slot.VEHICLE,
            "mass 2600 kg front 1500 kg rear 1900 kg drag 1.45 m2 wheelbase 2850 mm cg 760 mm split 54 %");

    private static Combination of(Specification order) {
        return Builds.of(order);
    }

    private static PullAnswer pull(Specification order) {
        return PullAnswer.at(of(order), SIX, ROAD).orThrow();
    }

    @Test
    void theHighestGearThatHoldsIsTheTallestWithForceLeftOver() {
        PullAnswer answer = pull(TOURER);
        PullAnswer.Row holding = answer.holding().orElseThrow();
        assertThat(answer.rows()).filteredOn(row -> row.held().holds()).last().isEqualTo(holding);
        assertThat(answer.top()).isPresent();
        assertThat(answer.findings().get(0).verdict()).isEqualTo(Verdict.MET);
        assertThat(answer.power().gear()).isEqualTo(holding.gear());
    }

    /** The last driving force of the working is the one that the answer stands on, by whichever state of the converter. */
    @ParameterizedTest
    @CsvSource({"65", "40", "8"})
    void worksTheDrivingForceOutFromTheEngine(double mph) {
        PullAnswer answer =
                PullAnswer.at(of(TOURER), SIX, Speed.ofMilesPerHour(mph)).orThrow();
        PullAnswer.Row holding = answer.holding().orElseThrow();
        Working working = answer.working();
        assertThat(working.steps())
                .filteredOn(step ->
                        step.name().equals("driving force in " + holding.gear().label()))
                .singleElement()
                .satisfies(step -> assertThat(step.result().number(UnitSystem.METRIC))
                        .isCloseTo(holding.held().drive().si(), within(1e-6)));
        Whole.assertWorkedOut(
                TopAnswer.of(of(TOURER.drivenIn("altitude 500 m"))).orThrow());
    }

    @Test
    void crankPowerIsThatAtTheWheelsOverTheEfficiency() {
        CruisePower power = CruisePower.of(of(TOURER)).orThrow();
        assertThat(power.atCrank().si() * power.gear().efficiency())
                .isCloseTo(power.atWheels().si(), within(1e-6));
        assertThat(CruisePower.of(of(Specification.empty())).reason()).contains("the order names no cruise speed");
    }

    @Test
    void anOpenConverterTakesMorePowerThanALockedOne() {
        Specification open = TOURER.with(
                Slot.TRANSMISSION, "4.03 2.36 1.53 1.15 0.85 0.67 converter stall 2.0 stall-speed 2300 rpm no lockup");
        CruisePower slipping = CruisePower.of(of(open)).orThrow();
        CruisePower locked = CruisePower.of(of(TOURER)).orThrow();
        assertThat(slipping.atWheels()).isEqualTo(locked.atWheels());
        assertThat(slipping.atCrank().isGreaterThan(locked.atCrank())).isTrue();
        assertThat(slipping.engineSpeed().isGreaterThan(locked.engineSpeed())).isTrue();
    }

    @Test
    void aTopGearThatDoesNotHoldIsExceededAndNamesTheGearThatDoes() {
        PullAnswer steep =
                PullAnswer.at(of(TOURER), Grade.ofPercent(15.0), ROAD).orThrow();
        Finding finding = steep.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(finding.statement()).contains("is the highest gear that holds it");
        PullAnswer wall = PullAnswer.at(of(TOURER), Grade.ofPercent(60.0), ROAD).orThrow();
        assertThat(wall.holding()).isEmpty();
        assertThat(wall.findings().get(0).statement()).contains("no gear holds it");
    }

    @Test
    void topGearMayNotCoverTheSpeed() {
        PullAnswer crawling = PullAnswer.at(
                        of(Builds.TOURER.with(Slot.TRANSMISSION, "4.03 2.36 1.53 1.15 0.85 0.67 clutch")),
                        SIX,
                        Speed.ofMilesPerHour(5.0))
                .orThrow();
        assertThat(crawling.top()).isEmpty();
        assertThat(crawling.findings().get(0).verdict()).isEqualTo(Verdict.NOT_EVALUATED);
    }

    @Test
    void refusesASpeedOfZero() {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> PullAnswer.at(of(TOURER), SIX, Speed.ofMetersPerSecond(0.0)));
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> SprintAnswer.to(of(TOURER), Speed.ofMetersPerSecond(0.0)));
    }

    @Test
    void thinHotAirCostsANaturallyAspiratedEngineTorqueAndDrag() {
        Specification measured = TOURER.with(
                Slot.ENGINE,
                "300 lb-ft at 1000 rpm, 400 lb-ft at 2500 rpm, 430 lb-ft at 4400 rpm, 391 lb-ft at 5900 rpm, idle 600 rpm, max 5900 rpm");
        Specification high = measured.drivenIn("altitude 8000 ft temperature 90 degF");
        PullAnswer there = pull(high);
        PullAnswer here = pull(measured);
        assertThat(there.load().drag(ROAD).isLessThan(here.load().drag(ROAD))).isTrue();
        assertThat(there.top()
                        .orElseThrow()
                        .held()
                        .drive()
                        .isLessThan(here.top().orElseThrow().held().drive()))
                .isTrue();
        assertThat(there.findings()).extracting(Finding::checked).contains("range of SAE J1349");
        Specification boosted = high.with(
                Slot.ENGINE, "440 hp at 5900 rpm, 430 lb-ft at 4400 rpm, supercharged, idle 600 rpm, max 6600 rpm");
        assertThat(pull(boosted).assumptions())
                .extracting(Assumption::statement)
                .anyMatch(statement -> statement.contains("does not follow that correction"));
    }

    @Test
    void theTopSpeedIsTheLowerOfPowerAndGearing() {
        TopAnswer top = TopAnswer.of(of(TOURER)).orThrow();
        assertThat(top.rows().get(0).top().orThrow().limit()).isEqualTo(TopSpeed.Limit.GEARING);
        assertThat(top.rows().get(top.rows().size() - 1).top().orThrow().limit())
                .isEqualTo(TopSpeed.Limit.POWER);
        for (TopAnswer.Row row : top.rows()) {
            assertThat(row.top().orThrow().speed().si())
                    .isLessThanOrEqualTo(top.fastest().top().orThrow().speed().si());
        }
        assertThat(top.fastest().driveshaftSpeed().orThrow().si())
                .isCloseTo(
                        top.fastest().engineSpeed().orThrow().si()
                                / top.fastest().gear().shaftRatio(),
                        within(1e-9));
    }

    /** Symbol R is 170 km/h, H 210, Y 300 (ISO 4000-1, UN Regulation 30; the table tire/speed-symbol.csv names its copies): what the vehicle reaches above that is exceeded, what the gearing alone allows is marginal. */
    @ParameterizedTest
    @CsvSource({"R, EXCEEDED", "H, EXCEEDED", "Y, MET"})
    void aTireSlowerThanTheReachedSpeedIsExceeded(String symbol, Verdict verdict) {
        Specification order = TOURER.with(Slot.TIRE, "265/75R16 116" + symbol + " revs 655 rev/mile");
        TopAnswer top = TopAnswer.of(of(order)).orThrow();
        double reached = top.fastest().top().orThrow().speed().in(Speed.KILOMETER_PER_HOUR);
        assertThat(reached).isBetween(215.0, 240.0);
        assertThat(top.findings().get(0).checked()).isEqualTo("reachable top tire speed");
        assertThat(top.findings().get(0).verdict()).isEqualTo(verdict);
        assertThat(DriveChecks.topSpeed(of(order), RoadSpeedsAnswer.atMaximum(of(order)))
                        .verdict())
                .isEqualTo(Verdict.MARGINAL);
    }

    @Test
    void frontTiresThatDifferAreHeldAgainstTheReachedSpeedToo() {
        Specification order = TOURER.with(Slot.TIRE, "265/75R16 116Y revs 655 rev/mile")
                .with(Slot.FRONT_TIRE, "265/75R16 116Q revs 655 rev/mile");
        TopAnswer top = TopAnswer.of(of(order)).orThrow();
        assertThat(top.findings().get(0).verdict()).isEqualTo(Verdict.MET);
        assertThat(top.findings().get(1).checked()).contains("front");
        assertThat(top.findings().get(1).verdict()).isEqualTo(Verdict.EXCEEDED);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "mass 2600 kg; the vehicle's drag area is not given",
                "drag 1.4 m2; the vehicle's mass is not given"
            })
    void asksForWhatTheVehicleLacks(String vehicle, String reason) {
        assertThat(TopAnswer.of(of(TOURER.with(Slot.VEHICLE, vehicle))).reason())
                .hasValueSatisfying(why -> assertThat(why).startsWith(reason));
    }

    @Test
    void runsUpToASpeedAndOverAQuarterMile() {
        SprintAnswer sprint =
                SprintAnswer.to(of(TOURER), SprintAnswer.USUAL_TARGET).orThrow();
        assertThat(sprint.run().time().si()).isBetween(5.0, 12.0);
        assertThat(sprint.quarterMile().orThrow().distance().si()).isCloseTo(402.336, within(0.01));
        assertThat(sprint.run().marks()).hasSize(6);
        assertThat(sprint.grip().layout()).isEqualTo(DriveLayout.REAR);
        assertThat(sprint.shifts()).hasSize(5);
        assertThat(sprint.findings()).isEmpty();
        Whole.assertWorkedOut(sprint);
    }

    @Test
    void statedInertiasTakeThePlaceOfDefaults() {
        SprintAnswer stated = SprintAnswer.to(
                        of(
                                TYPED.with(
                                        Slot.VEHICLE,
                                        "mass 2600 kg drag 1.45 m2 wheelbase 2850 mm cg 760 mm split 54 % engine-inertia 1 kg m2 wheel-inertia 9 kg m2")),
                        ROAD)
                .orThrow();
        SprintAnswer defaulted = SprintAnswer.to(of(TYPED), ROAD).orThrow();
        assertThat(stated.run().time().isGreaterThan(defaulted.run().time())).isTrue();
        assertThat(stated.assumptions()).extracting(Assumption::subject).doesNotContain("inertia of the engine");
        assertThat(defaulted.assumptions())
                .extracting(Assumption::subject)
                .contains("inertia of the engine", "inertia of the wheels", "shift time");
    }

    @Test
    void softGroundAndFullTimeDriveUseAllWheels() {
        assertThat(SprintAnswer.to(of(TOURER.drivenOn("gravel")), ROAD)
                        .orThrow()
                        .grip()
                        .layout())
                .isEqualTo(DriveLayout.LOCKED);
        assertThat(SprintAnswer.to(of(TOURER.with(Slot.TRANSFER, "1.00 2.72 open")), ROAD)
                        .orThrow()
                        .grip()
                        .layout())
                .isEqualTo(DriveLayout.OPEN);
        assertThat(SprintAnswer.to(of(TOURER.with(Slot.TRANSFER, "1.00 2.72 locked")), ROAD)
                        .orThrow()
                        .grip()
                        .grip())
                .isEmpty();
        assertThat(SprintAnswer.to(of(TOURER.with(Slot.TRANSFER, "none")), ROAD)
                        .orThrow()
                        .grip()
                        .layout())
                .isEqualTo(DriveLayout.REAR);
    }

    @Test
    void aRunWithoutBalanceOrBeyondTheTopSpeedSaysSo() {
        assertThat(SprintAnswer.to(of(TOURER.with(Slot.VEHICLE, "mass 2600 kg drag 1.4 m2")), ROAD)
                        .reason())
                .hasValueSatisfying(why -> assertThat(why).contains("wheelbase 2850 mm cg 760 mm split 54 %"));
        assertThat(SprintAnswer.to(of(TOURER), Speed.ofMilesPerHour(400.0)).reason())
                .isPresent();
    }

    @Test
    void aManualStartsByItsClutch() {
        Specification manual = TYPED.with(Slot.TRANSMISSION, "4.03 2.36 1.53 1.15 0.85 0.67 clutch");
        SprintAnswer sprint = SprintAnswer.to(of(manual), ROAD).orThrow();
        assertThat(sprint.assumptions()).extracting(Assumption::subject).contains("clutch at the start");
        assertThat(sprint.run().phases()).anyMatch(phase -> phase.label().equals("shift"));
    }

    @Test
    void gripHoldsMoreWithAllWheels() {
        GripAnswer grip = GripAnswer.of(of(TOURER)).orThrow();
        assertThat(grip.rows())
                .extracting(GripAnswer.Row::layout)
                .containsExactly(DriveLayout.REAR, DriveLayout.LOCKED);
        assertThat(grip.rows().get(1).sliding().isGreaterThan(grip.rows().get(0).sliding()))
                .isTrue();
        assertThat(grip.engine().orThrow().gear()).isEqualTo("1st low");
        assertThat(grip.assumptions()).extracting(Assumption::subject).contains("surface");
        GripAnswer ice = GripAnswer.on(of(TOURER), Surface.parse("ice")).orThrow();
        assertThat(ice.rows().get(1).sliding().isLessThan(grip.rows().get(1).sliding()))
                .isTrue();
    }

    @Test
    void gripNeedsNoEngine() {
        GripAnswer grip = GripAnswer.of(of(TOURER.without(Slot.ENGINE))).orThrow();
        assertThat(grip.engine().reason()).contains("no engine is chosen");
        Whole.assertWorkedOut(grip);
    }

    @Test
    void theConverterStallsCreepsAndCruisesOpen() {
        ConverterAnswer answer = ConverterAnswer.of(of(TOURER)).orThrow();
        assertThat(answer.match().stall().pumpSpeed().toRpm()).isCloseTo(2300.0, within(1e-6));
        assertThat(answer.creepForce().orThrow().si()).isPositive();
        assertThat(answer.creepSpeed().orThrow().toMilesPerHour()).isBetween(1.0, 8.0);
        assertThat(answer.cruise().orThrow().speedRatio()).isBetween(0.8, 0.98);
        ConverterAnswer other = ConverterAnswer.of(of(TOURER), Converter.parse("stall 2.4 stall-speed 2800 rpm"))
                .orThrow();
        assertThat(other.match().stall().pumpSpeed().toRpm()).isCloseTo(2800.0, within(1e-6));
        assertThat(ConverterAnswer.of(Builds.crawler()).reason())
                .hasValueSatisfying(why -> assertThat(why).contains("clutch"));
    }

    @Test
    void drawsForceAndPowerOfBothRanges() {
        DrivingForceAnswer high = DrivingForceAnswer.of(of(TOURER), Range.HIGH).orThrow();
        assertThat(high.gears()).hasSize(6);
        assertThat(high.resistance().get(0).speed().si()).isZero();
        assertThat(high.findings()).isEmpty();
        Whole.assertWorkedOut(high);
        assertThat(DrivingForceAnswer.of(of(TOURER.with(Slot.TRANSFER, "none")), Range.LOW)
                        .reason())
                .contains("the transfer case has no low range");
    }
}
