package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Slot;
import drivetrain.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class CrawlAnswerTest {

    @Test
    void multipliesTheShortestGearsAndCreepsAtIdle() {
        CrawlAnswer answer = CrawlAnswer.of(Builds.crawler()).orThrow();

        assertThat(answer.crawl().ratio()).isCloseTo(5.61 * 4.00 * 41.0 / 9.0, within(1e-9));
        assertThat(answer.speed().orThrow().toMetersPerSecond())
                .isCloseTo(600.0 / 60.0 * 2.673 / answer.crawl().ratio(), within(1e-9));
        assertThat(answer.stallTorque()).isEqualTo(answer.torque());
    }

    @Test
    void multipliesTheTorqueOfAConverterAtStall() {
        CrawlAnswer answer = CrawlAnswer.of(Builds.tourer()).orThrow();

        assertThat(answer.stallTorque().orThrow().ratioTo(answer.torque().orThrow()))
                .isCloseTo(2.0, within(1e-12));
    }

    @Test
    void needsNeitherEngineNorTireForTheRatio() {
        CrawlAnswer answer = CrawlAnswer.of(
                        Builds.of(Builds.CRAWLER.without(Slot.ENGINE).without(Slot.TIRE)))
                .orThrow();

        assertThat(answer.idle().reason()).contains("no engine is chosen");
        assertThat(answer.rolling().reason()).contains("no tire is chosen");
        assertThat(answer.speed().reason()).contains("no engine is chosen");
        assertThat(answer.torque().reason()).contains("no engine is chosen");
        assertThat(answer.stallTorque().reason()).contains("no engine is chosen");
        assertThat(answer.assumptions()).isEmpty();
        Whole.assertWorkedOut(answer);
    }

    @Test
    void worksWithTheTireButWithoutTheEngine() {
        CrawlAnswer answer =
                CrawlAnswer.of(Builds.of(Builds.CRAWLER.without(Slot.ENGINE))).orThrow();

        assertThat(answer.rolling().value()).isPresent();
        Whole.assertWorkedOut(answer);
    }

    @Test
    void warnsOfTiedAxlesOnlyWhereTheyAreTied() {
        CrawlAnswer tied = CrawlAnswer.of(Builds.crawler()).orThrow();
        CrawlAnswer rear = CrawlAnswer.of(Builds.of(Builds.CRAWLER.with(Slot.TRANSFER, "1.00 4.00 rear-only")))
                .orThrow();

        assertThat(tied.cautions()).hasSize(2);
        assertThat(rear.cautions()).hasSize(1);
        assertThat(tied.findings()).isEmpty();
    }

    @Test
    void saysWhatItRestsOn() {
        CrawlAnswer answer = CrawlAnswer.of(Builds.tourer()).orThrow();

        assertThat(answer.assumptions())
                .containsAll(answer.crawl().coupling().speedAssumptions())
                .containsAll(answer.crawl().gear().efficiencyAssumptions());
        Whole.assertWorkedOut(answer);
    }

    @Test
    void saysWhatIsMissing() {
        assertThat(CrawlAnswer.of(Builds.of(Builds.CRAWLER.without(Slot.REAR_AXLE)))
                        .reason())
                .contains("no rear axle is chosen");
    }

    @Test
    void worksItsTorquesOut() {
        CrawlAnswer automatic = CrawlAnswer.of(Builds.tourer()).orThrow();
        CrawlAnswer manual = CrawlAnswer.of(Builds.crawler()).orThrow();

        assertThat(automatic.working().steps())
                .extracting(step -> step.result().number(UnitSystem.METRIC))
                .contains(
                        automatic.torque().orThrow().toNewtonMeters(),
                        automatic.stallTorque().orThrow().toNewtonMeters());
        assertThat(manual.working().steps())
                .extracting(step -> step.result().number(UnitSystem.METRIC))
                .contains(manual.torque().orThrow().toNewtonMeters());
        assertThat(manual.working().inputs()).extracting(input -> input.name()).doesNotContain("stall torque ratio");
    }
}
