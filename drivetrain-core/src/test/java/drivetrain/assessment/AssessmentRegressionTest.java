package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Our own figures for two invented packages; a change of any of them must be meant. */
class AssessmentRegressionTest {

    private static final double TIGHT = 1e-6;

    @Test
    void keepsTheFiguresOfTheTourer() {
        Assessment tourer = Assessment.of(Builds.tourer());

        assertThat(tourer.cruise().orThrow().engineSpeed().toRpm()).isCloseTo(1908.34324786, within(TIGHT));
        assertThat(tourer.cruise().orThrow().unlocked().orElseThrow().toRpm()).isCloseTo(1967.36417305, within(TIGHT));
        assertThat(tourer.crawl().orThrow().crawl().ratio()).isCloseTo(40.85687273, within(TIGHT));
        assertThat(tourer.crawl().orThrow().stallTorque().orThrow().toNewtonMeters())
                .isCloseTo(40405.70964418, within(TIGHT));
        assertThat(tourer.speedometer().orThrow().drivenGears().orElseThrow().exactTeeth())
                .isCloseTo(17.76001776, within(TIGHT));
    }

    @Test
    void keepsTheFiguresOfTheCrawler() {
        Assessment crawler = Assessment.of(Builds.crawler());

        assertThat(crawler.cruise().orThrow().engineSpeed().toRpm()).isCloseTo(1885.66255144, within(TIGHT));
        assertThat(crawler.crawl().orThrow().speed().orThrow().toMilesPerHour()).isCloseTo(0.58490910, within(TIGHT));
        assertThat(crawler.torque().orThrow().rows().get(0).wheels().total().toNewtonMeters())
                .isCloseTo(44430.96505442, within(TIGHT));
        assertThat(crawler.speeds().orThrow().rows().get(11).roadSpeed().toKilometersPerHour())
                .isCloseTo(281.64292683, within(TIGHT));
        assertThat(crawler.shifts().orThrow().high().shifts().get(0).after().toRpm())
                .isCloseTo(3251.33689840, within(TIGHT));
    }
}
