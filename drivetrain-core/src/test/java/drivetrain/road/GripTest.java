package drivetrain.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Force;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class GripTest {

    private static final Grade SLOPE = Grade.ofPercent(12.0);

    private static Force net(Grip grip, Force force, Grade grade) {
        return Force.ofNewtons(force.si() - grip.rolling() * grip.balance().total(grade));
    }

    /** At the limit the driven axle carries exactly force over friction, with the load that this force shifts. */
    @ParameterizedTest
    @CsvSource({"0.3, 0.01", "0.65, 0.01", "0.9, 0.08"})
    void atTheLimitTheDrivenAxleUsesAllItsFriction(double friction, double rolling) {
        Grip grip = new Grip(Roads.BALANCE, friction, rolling);
        Force rear = grip.greatest(DriveLayout.REAR, SLOPE);
        assertThat(friction * grip.balance().rear(SLOPE, net(grip, rear, SLOPE)).si())
                .isCloseTo(rear.si(), within(1e-6));
        Force front = grip.greatest(DriveLayout.FRONT, SLOPE);
        assertThat(friction
                        * grip.balance().front(SLOPE, net(grip, front, SLOPE)).si())
                .isCloseTo(front.si(), within(1e-6));
        Force open = grip.greatest(DriveLayout.OPEN, SLOPE);
        double lighter = Math.min(
                grip.balance().front(SLOPE, net(grip, open, SLOPE)).si(),
                grip.balance().rear(SLOPE, net(grip, open, SLOPE)).si());
        assertThat(2.0 * friction * lighter).isCloseTo(open.si(), within(1e-6));
        assertThat(grip.greatest(DriveLayout.LOCKED, SLOPE).si())
                .isCloseTo(Grip.tied(Roads.BALANCE.mass(), friction, SLOPE).si(), within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(DriveLayout.class)
    void onTheSteepestGradeTheForceJustHolds(DriveLayout layout) {
        Grip grip = new Grip(Roads.BALANCE, 0.65, 0.02);
        Grade steepest = grip.steepest(layout).orThrow();
        double needed =
                Roads.BALANCE.mass().si() * RoadLoad.GRAVITY * (steepest.sine() + grip.rolling() * steepest.cosine());
        assertThat(grip.greatest(layout, steepest).si()).isCloseTo(needed, within(1e-6));
    }

    @Test
    void tiedAxlesHoldMostAndNoLayoutHoldsMore() {
        Grip grip = new Grip(Roads.BALANCE, 0.65, 0.01);
        Force tied = grip.greatest(DriveLayout.LOCKED, Grade.level());
        for (DriveLayout layout : DriveLayout.values()) {
            assertThat(grip.greatest(layout, Grade.level()).si()).isLessThanOrEqualTo(tied.si() + 1e-9);
        }
    }

    @Test
    void aTallShortVehicleTipsBeforeItSlips() {
        AxleBalance tall = new AxleBalance(Mass.ofKilograms(1500.0), 0.3, Length.ofMeters(1.5), Length.ofMeters(1.2));
        Grip grip = new Grip(tall, 1.2, 0.0);
        assertThat(grip.steepest(DriveLayout.LOCKED).orThrow().tangent()).isCloseTo(0.3 * 1.5 / 1.2, within(1e-12));
        assertThat(grip.greatest(DriveLayout.REAR, Grade.level()).si())
                .isCloseTo(1.2 * tall.total(Grade.level()), within(1e-9));
        assertThat(tall.front(Grade.level(), Force.ofNewtons(1e6)).si()).isZero();
    }

    @Test
    void groundThatResistsMoreThanItGripsHoldsNothing() {
        Grip grip = new Grip(Roads.BALANCE, 0.1, 0.15);
        assertThat(grip.steepest(DriveLayout.LOCKED).reason())
                .hasValueSatisfying(why -> assertThat(why).contains("even on the level"));
    }

    @Test
    void explainsItself() {
        Grip grip = new Grip(Roads.BALANCE, 0.65, 0.01);
        for (DriveLayout layout : DriveLayout.values()) {
            assertThat(grip.working(layout, SLOPE).steps()).hasSize(3);
            assertThat(layout.label()).isNotBlank();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, 1.0, -0.1, 1.2, Double.NaN})
    void refusesACenterOfGravityOutsideTheWheelbase(double share) {
        assertThat(Refusals.of(() -> new AxleBalance(
                                Mass.ofKilograms(2000), share, Length.ofMeters(2.5), Length.ofMeters(0.7)))
                        .problem())
                .contains("outside the wheelbase");
    }

    @Test
    void refusesLengthsOutOfRange() {
        assertThat(Refusals.of(() -> new AxleBalance(
                                Mass.ofKilograms(2000), 0.5, Length.ofMeters(0.5), Length.ofMeters(0.7)))
                        .subject())
                .isEqualTo("wheelbase");
        assertThat(Refusals.of(() -> new AxleBalance(
                                Mass.ofKilograms(2000), 0.5, Length.ofMeters(2.5), Length.ofMeters(4.0)))
                        .subject())
                .contains("center of gravity");
    }
}
