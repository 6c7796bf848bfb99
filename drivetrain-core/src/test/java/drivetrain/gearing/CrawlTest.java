package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import drivetrain.quantity.Torque;
import drivetrain.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class CrawlTest {

    private static final Torque TORQUE = Torque.ofNewtonMeters(300.0);

    @Test
    void multipliesLowestGearRangeAxleAndHub() {
        Crawl crawl = Crawl.of(Trains.with(Overdrive.parse("0.78"), HubReduction.parse("24/16")));
        assertThat(crawl.ratio()).isCloseTo(4.03 * 2.72 * 4.1 * 1.5, within(1e-12));
        assertThat(crawl.gear().overdrive()).isFalse();
    }

    @Test
    void countsAnUnderdrive() {
        Crawl crawl = Crawl.of(Trains.with(Overdrive.parse("1.25"), HubReduction.none()));
        assertThat(crawl.ratio()).isCloseTo(4.03 * 1.25 * 2.72 * 4.1, within(1e-12));
    }

    @Test
    void raisesTheTorqueButNotTheRatioByTheConverter() {
        Crawl crawl = Crawl.of(Trains.with(Overdrive.none(), HubReduction.none()));
        assertThat(crawl.ratio()).isCloseTo(4.03 * 2.72 * 4.1, within(1e-12));
        assertThat(crawl.stallTorque(TORQUE).orThrow().toNewtonMeters())
                .isCloseTo(2.0 * crawl.gear().wheelTorque(TORQUE).toNewtonMeters(), within(1e-9));
    }

    @Test
    void doesNotMultiplyThroughAClutch() {
        Crawl crawl = Crawl.of(Trains.fiveSpeed());
        assertThat(crawl.stallTorque(TORQUE).orThrow()).isEqualTo(crawl.gear().wheelTorque(TORQUE));
    }

    @Test
    void doesNotGuessAStallTorqueRatio() {
        Crawl crawl = new Crawl(Trains.fiveSpeed().lowest(), Converter.unknown());
        assertThat(crawl.stallTorque(TORQUE).reason()).contains("the stall torque ratio of the converter is not known");
        assertThat(crawl.stallTorqueWorking(TORQUE).value()).isEmpty();
    }

    @Test
    void creepsAtIdle() {
        Crawl crawl = Crawl.of(Trains.fiveSpeed());
        Length radius = Length.ofMillimeters(400.0);
        AngularSpeed idle = AngularSpeed.ofRpm(675.0);
        assertThat(crawl.ratio()).isEqualTo(45.0);
        assertThat(crawl.speedAt(idle, radius).toMetersPerSecond())
                .isCloseTo(15.0 / 60.0 * 2.0 * Math.PI * 0.4, within(1e-12));
        assertThat(crawl.speedWorking(idle, radius).steps())
                .last()
                .satisfies(step ->
                        assertThat(step.result().text(UnitSystem.METRIC)).isEqualTo("2.26 km/h"));
    }

    @Test
    void explainsRatioAndStallTorque() {
        Crawl crawl = Crawl.of(Trains.with(Overdrive.none(), HubReduction.none()));
        assertThat(crawl.working().question()).isEqualTo("crawl ratio");
        assertThat(crawl.working().steps().get(0).result().number(UnitSystem.US))
                .isEqualTo(crawl.ratio());
        Working working = crawl.stallTorqueWorking(TORQUE).orThrow();
        assertThat(working.steps()).first().extracting(Working.Step::formula).isEqualTo("T_t = m x T_e");
        assertThat(working.steps().get(3).result().number(UnitSystem.METRIC))
                .isEqualTo(crawl.stallTorque(TORQUE).orThrow().toNewtonMeters());
    }
}
