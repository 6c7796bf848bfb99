package drivetrain.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Force;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.MomentOfInertia;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Time;
import drivetrain.road.SpeedRun.Gear;
import drivetrain.road.SpeedRun.Phase;
import drivetrain.road.SpeedRun.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

class SpeedRunTest {

    private static final Force MUCH_GRIP = Force.ofNewtons(1e9);
    private static final Time NO_TIME = Time.ofSeconds(0.0);
    private static final Mass MASS = Mass.ofKilograms(2300.0);

    private static Plan threeGears(Force grip, Time shift) {
        return new Plan(
                List.of(
                        new Gear(
                                Roads.constant("1st", 12_000.0, 2.0, 12.0),
                                Mass.ofKilograms(2900.0),
                                Roads.speed(11.0)),
                        new Gear(
                                Roads.constant("2nd", 7_000.0, 4.0, 22.0), Mass.ofKilograms(2500.0), Roads.speed(21.0)),
                        new Gear(Roads.power("3rd", 130_000.0, 10.0, 50.0), MASS, Roads.speed(50.0))),
                Roads.wagon(),
                grip,
                shift,
                Mass.ofKilograms(2220.0));
    }

    @Test
    void energyIsKeptInEveryPhase() {
        SpeedRun run = SpeedRun.toSpeed(threeGears(MUCH_GRIP, Time.ofSeconds(0.4)), Roads.speed(30.0), List.of())
                .orThrow();
        assertThat(run.phases()).hasSize(5);
        for (Phase phase : run.phases()) {
            double gained = 0.5
                    * phase.effectiveMass().si()
                    * (Math.pow(phase.exit().si(), 2.0) - Math.pow(phase.entry().si(), 2.0));
            assertThat(phase.driveWork() - phase.resistanceWork()).isCloseTo(gained, within(1.0));
        }
    }

    @Test
    void phasesFollowEachOther() {
        SpeedRun run = SpeedRun.toSpeed(threeGears(MUCH_GRIP, Time.ofSeconds(0.4)), Roads.speed(30.0), List.of())
                .orThrow();
        for (int i = 1; i < run.phases().size(); i++) {
            assertThat(run.phases().get(i).start())
                    .isEqualTo(run.phases().get(i - 1).end());
            assertThat(run.phases().get(i).entry())
                    .isEqualTo(run.phases().get(i - 1).exit());
        }
        assertThat(run.phases().get(1).label()).isEqualTo("shift");
        assertThat(run.phases().get(1).exit()).isLessThan(run.phases().get(1).entry());
        assertThat(run.speed().si()).isCloseTo(30.0, within(1e-5));
    }

    @Test
    void passesTheMarksInOrder() {
        List<Speed> wanted = List.of(Roads.speed(20.0), Roads.speed(11.0), Roads.speed(30.0), Roads.speed(60.0));
        SpeedRun run = SpeedRun.toSpeed(threeGears(MUCH_GRIP, NO_TIME), Roads.speed(30.0), wanted)
                .orThrow();
        assertThat(run.marks()).extracting(mark -> mark.speed().si()).containsExactly(11.0, 20.0, 30.0);
        assertThat(run.marks().get(2).time().si()).isCloseTo(run.time().si(), within(1e-6));
        assertThat(run.marks().get(0).distance().isLessThan(run.distance())).isTrue();
    }

    @Test
    void gripLimitsTheLaunch() {
        SpeedRun free = SpeedRun.toSpeed(threeGears(MUCH_GRIP, NO_TIME), Roads.speed(20.0), List.of())
                .orThrow();
        SpeedRun slippery = SpeedRun.toSpeed(threeGears(Force.ofNewtons(4000.0), NO_TIME), Roads.speed(20.0), List.of())
                .orThrow();
        assertThat(slippery.time().isGreaterThan(free.time())).isTrue();
    }

    @Test
    void runsOverADistance() {
        SpeedRun run = SpeedRun.overDistance(
                        threeGears(MUCH_GRIP, Time.ofSeconds(0.3)), Length.ofMeters(402.336), List.of())
                .orThrow();
        assertThat(run.distance().si()).isCloseTo(402.336, within(1e-3));
        assertThat(run.phases().stream()
                        .mapToDouble(phase -> phase.distance().si())
                        .sum())
                .isCloseTo(402.336, within(1e-3));
    }

    @Test
    void endsASpeedWithinAShiftOrGear() {
        SpeedRun run = SpeedRun.overDistance(
                        threeGears(MUCH_GRIP, Time.ofSeconds(5.0)), Length.ofMeters(40.0), List.of())
                .orThrow();
        assertThat(run.phases().get(run.phases().size() - 1).label()).isEqualTo("shift");
    }

    @Test
    void saysWhereItStopsToAccelerate() {
        assertThat(SpeedRun.toSpeed(threeGears(MUCH_GRIP, NO_TIME), Roads.speed(49.9), List.of())
                        .reason())
                .hasValueSatisfying(why -> assertThat(why).contains("in 3rd nothing accelerates it"));
        assertThat(SpeedRun.toSpeed(threeGears(Force.ofNewtons(1.0), NO_TIME), Roads.speed(5.0), List.of())
                        .reason())
                .hasValueSatisfying(why -> assertThat(why).contains("beyond 0.0 mph"));
    }

    @Test
    void saysThatTheGearingEnds() {
        Plan plan = new Plan(
                List.of(new Gear(Roads.constant("1st", 9000.0, 1.0, 10.0), MASS, Roads.speed(10.0))),
                Roads.wagon(),
                MUCH_GRIP,
                NO_TIME,
                MASS);
        assertThat(SpeedRun.toSpeed(plan, Roads.speed(15.0), List.of()).reason())
                .hasValueSatisfying(why -> assertThat(why).contains("gearing ends at 22.4 mph"));
    }

    @Test
    void refusesTargetsOfZero() {
        Plan plan = threeGears(MUCH_GRIP, NO_TIME);
        assertThat(Refusals.of(() -> SpeedRun.toSpeed(plan, Roads.speed(0.0), List.of()))
                        .subject())
                .isEqualTo("target speed");
        assertThat(Refusals.of(() -> SpeedRun.overDistance(plan, Length.ofMeters(0.0), List.of()))
                        .subject())
                .isEqualTo("distance");
    }

    @Test
    void rotatingPartsCountWithTheSquareOfTheRatio() {
        MomentOfInertia engine = MomentOfInertia.ofKilogramSquareMeters(0.3);
        MomentOfInertia none = MomentOfInertia.ofKilogramSquareMeters(0.0);
        Mass mass = Mass.ofKilograms(2000.0);
        Length radius = Length.ofMeters(0.4);
        assertThat(EffectiveMass.of(mass, engine, 10.0, 0.9, none, radius).si())
                .isCloseTo(2000.0 + 0.3 * 100.0 * 0.9 / 0.16, within(1e-9));
        assertThat(EffectiveMass.of(mass, none, 10.0, 0.9, engine, radius).si())
                .isCloseTo(2000.0 + 0.3 / 0.16, within(1e-9));
        assertThat(EffectiveMass.engineAssumption().flagged()).isTrue();
        assertThat(EffectiveMass.wheelAssumption().statement()).contains("kg m2");
        assertThat(EffectiveMass.defaultEngine().si()).isPositive();
        assertThat(EffectiveMass.defaultWheel().si()).isPositive();
    }
}
