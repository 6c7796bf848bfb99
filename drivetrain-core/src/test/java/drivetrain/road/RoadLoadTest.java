package drivetrain.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Area;
import drivetrain.quantity.Density;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Speed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RoadLoadTest {

    private static final Speed SPEED = Speed.ofMetersPerSecond(30.0);

    @Test
    void addsRollingDragAndClimb() {
        RoadLoad load = Roads.wagon().on(Grade.ofPercent(6.0));
        assertThat(load.total(SPEED).si())
                .isCloseTo(
                        load.rolling(SPEED).si()
                                + load.drag(SPEED).si()
                                + load.climb().si(),
                        within(1e-9));
        assertThat(load.drag(SPEED).si()).isCloseTo(0.5 * 1.225 * 1.4 * 900.0, within(1e-9));
        assertThat(load.climb().si()).isCloseTo(2200.0 * 9.80665 * Math.sin(Math.atan(0.06)), within(1e-9));
        assertThat(load.weight().si()).isCloseTo(2200.0 * 9.80665, within(1e-9));
    }

    @Test
    void windDragsByTheSpeedOfTheAirAndCostsPowerByThatOfTheRoad() {
        RoadLoad load = Roads.wagon().inWind(Speed.ofMetersPerSecond(10.0));
        double drag = 0.5 * 1.225 * 1.4 * 1600.0;
        assertThat(load.drag(SPEED).si()).isCloseTo(drag, within(1e-9));
        assertThat(load.powerAtWheels(SPEED).si())
                .isCloseTo((drag + load.rolling(SPEED).si()) * 30.0, within(1e-6));
    }

    @Test
    void aWindFromBehindThatIsFasterPushes() {
        RoadLoad load = Roads.wagon().inWind(Speed.ofMetersPerSecond(-40.0));
        assertThat(load.drag(SPEED).si()).isNegative();
    }

    @Test
    void softGroundResistsAlikeAtAnySpeed() {
        RoadLoad load =
                RoadLoad.level(Mass.ofKilograms(2000.0), Surface.parse("sand"), Area.ofSquareMeters(1.4), Roads.AIR);
        assertThat(load.rolling(SPEED)).isEqualTo(load.rolling(Speed.ofMetersPerSecond(1.0)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, -1.0, 99.0, 50_001.0})
    void refusesAnAbsurdMass(double kilograms) {
        Mass mass = Mass.ofKilograms(kilograms);
        assertThat(Refusals.of(() -> RoadLoad.level(mass, Roads.smooth(0.0), Area.ofSquareMeters(1.0), Roads.AIR))
                        .allowed())
                .isEqualTo("100 to 50000 kg");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, 10.5})
    void refusesAnAbsurdDragArea(double squareMeters) {
        Area area = Area.ofSquareMeters(squareMeters);
        assertThat(Refusals.of(() -> RoadLoad.level(Mass.ofKilograms(900), Roads.smooth(0.0), area, Roads.AIR))
                        .allowed())
                .isEqualTo("0.1 to 10 m2");
    }

    @Test
    void refusesAirAndWindOutOfRange() {
        Density thin = Density.ofKilogramsPerCubicMeter(0.1);
        assertThat(Refusals.of(() -> RoadLoad.level(
                                Mass.ofKilograms(900), Roads.smooth(0.0), Area.ofSquareMeters(1.0), thin))
                        .subject())
                .isEqualTo("air density");
        assertThat(Refusals.of(() -> Roads.wagon().inWind(Speed.ofMetersPerSecond(61.0)))
                        .subject())
                .isEqualTo("wind");
    }

    @Test
    void explainsItself() {
        assertThat(Roads.wagon().working(SPEED).steps()).hasSize(5);
        assertThat(Roads.wagon().inWind(SPEED).working(SPEED).inputs()).hasSize(7);
    }
}
