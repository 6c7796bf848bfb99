package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;
import org.junit.jupiter.api.Test;

/** Our own figures, held tight: a change here is a change of an answer and belongs into the change log. */
class GearingRegressionTest {

    private static final Length RADIUS = Length.ofMillimeters(2510.0).dividedBy(2.0 * Math.PI);

    private final GearTrain train = Trains.with(Overdrive.none(), HubReduction.none());

    @Test
    void cruisesAt65MphInTop() {
        assertThat(train.top().engineSpeedAt(Speed.ofMilesPerHour(65.0), RADIUS).toRpm())
                .isCloseTo(1908.0771442, within(1e-6));
    }

    @Test
    void crawlsAtFortyFive() {
        assertThat(Crawl.of(train).ratio()).isCloseTo(44.94256, within(1e-9));
    }

    @Test
    void putsDefaultLossesBetweenEngineAndWheel() {
        assertThat(train.lowest().wheelTorque(Torque.ofNewtonMeters(600.0)).toNewtonMeters())
                .isCloseTo(600.0 * 44.94256 * 0.93 * 0.96 * 0.95, within(1e-6));
    }
}
