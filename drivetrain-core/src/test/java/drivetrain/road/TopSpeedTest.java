package drivetrain.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Force;
import drivetrain.quantity.Speed;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TopSpeedTest {

    @Test
    void powerBalancesAtTheTopSpeed() {
        TopSpeed top = TopSpeed.of(Roads.power("5th high", 150_000.0, 20.0, 90.0), Roads.wagon())
                .orThrow();
        assertThat(top.limit()).isEqualTo(TopSpeed.Limit.POWER);
        assertThat(top.power().si()).isCloseTo(150_000.0, within(1e-3));
        assertThat(top.limit().label()).isEqualTo("power");
    }

    @Test
    void theGearingEndsEarlierInALowGear() {
        TopSpeed top = TopSpeed.of(Roads.power("2nd high", 150_000.0, 5.0, 25.0), Roads.wagon())
                .orThrow();
        assertThat(top.limit()).isEqualTo(TopSpeed.Limit.GEARING);
        assertThat(top.speed().si()).isEqualTo(25.0);
        assertThat(top.power().isLessThan(drivetrain.quantity.Power.ofWatts(150_000.0)))
                .isTrue();
    }

    @Test
    void aGearThatHoldsNothingSaysSo() {
        ForceCurve weak = Roads.constant("6th high", 50.0, 10.0, 60.0);
        assertThat(TopSpeed.of(weak, Roads.wagon()).reason())
                .hasValueSatisfying(why -> assertThat(why).contains("6th high"));
        assertThat(TopSpeed.fastest(List.of(weak), Roads.wagon()).reason()).isPresent();
    }

    @Test
    void aLimiterEndsWhatPowerAndGearingWouldNot() {
        ForceCurve curve = Roads.power("5th high", 150_000.0, 20.0, 90.0);
        Speed free = TopSpeed.of(curve, Roads.wagon()).orThrow().speed();

        TopSpeed held =
                TopSpeed.of(curve, Roads.wagon(), Optional.of(free.times(0.8))).orThrow();
        assertThat(held.limit()).isEqualTo(TopSpeed.Limit.LIMITER);
        assertThat(held.speed()).isEqualTo(free.times(0.8));
        assertThat(held.power()).isEqualTo(Roads.wagon().powerAtWheels(held.speed()));

        TopSpeed high =
                TopSpeed.of(curve, Roads.wagon(), Optional.of(free.times(1.1))).orThrow();
        assertThat(high.limit()).isEqualTo(TopSpeed.Limit.POWER);
        assertThat(high.speed().si()).isCloseTo(free.si(), within(1e-6));

        assertThat(TopSpeed.of(curve, Roads.wagon(), Optional.of(curve.highest()))
                        .orThrow()
                        .limit())
                .as("a limiter at the end of the gear adds nothing")
                .isEqualTo(TopSpeed.of(curve, Roads.wagon()).orThrow().limit());
        assertThat(TopSpeed.of(curve, Roads.wagon(), Optional.of(curve.lowest().times(0.9)))
                        .reason())
                .hasValueSatisfying(why -> assertThat(why).contains("below the slowest speed of 5th high"));
    }

    @Test
    void theFastestGearNeedNotBeTheTallest() {
        ForceCurve fourth = Roads.power("4th high", 150_000.0, 10.0, 70.0);
        ForceCurve sixth = Roads.constant("6th high", 1200.0, 15.0, 100.0);
        TopSpeed top = TopSpeed.fastest(List.of(fourth, sixth), Roads.wagon()).orThrow();
        assertThat(top.label()).isEqualTo("4th high");
    }

    @Test
    void curvesAnswerOnlyWithinTheirSpeeds() {
        ForceCurve curve = Roads.constant("1st high", 1000.0, 2.0, 10.0);
        assertThat(curve.at(Speed.ofMetersPerSecond(1.0)).reason()).isPresent();
        assertThat(curve.at(Speed.ofMetersPerSecond(11.0)).reason()).isPresent();
        assertThat(curve.at(Speed.ofMetersPerSecond(5.0)).orThrow()).isEqualTo(Force.ofNewtons(1000.0));
        assertThat(Refusals.of(() -> Roads.constant("x", 1.0, 3.0, 3.0)).problem())
                .contains("not in order");
        assertThat(Refusals.of(() -> Roads.constant("x", 1.0, -1.0, 3.0)).problem())
                .contains("not in order");
    }

    @Test
    void shiftsWhereTheNextGearPullsAsHard() {
        ForceCurve first = ForceCurve.of(
                "1st", Roads.speed(1.0), Roads.speed(20.0), v -> Force.ofNewtons(8000.0 - 300.0 * v.si()));
        ForceCurve second = Roads.constant("2nd", 5000.0, 3.0, 30.0);
        ForceCurve third = Roads.constant("3rd", 2000.0, 5.0, 50.0);
        ForceCurve fourth = Roads.constant("4th", 3000.0, 5.0, 60.0);
        List<ShiftPoint> points = ShiftPoint.of(List.of(first, second, third, fourth));
        assertThat(points.get(0).speed().si()).isCloseTo(10.0, within(1e-6));
        assertThat(points.get(0).crossing()).isTrue();
        assertThat(points.get(1).speed().si()).isEqualTo(30.0);
        assertThat(points.get(1).crossing()).isFalse();
        assertThat(points.get(2).speed().si()).isEqualTo(5.0);
    }
}
