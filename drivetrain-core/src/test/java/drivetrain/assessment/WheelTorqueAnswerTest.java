package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Slot;
import drivetrain.gearing.AxleTie;
import org.junit.jupiter.api.Test;

class WheelTorqueAnswerTest {

    @Test
    void multipliesThePeakTorqueByRatioAndEfficiency() {
        WheelTorqueAnswer answer = WheelTorqueAnswer.of(Builds.crawler()).orThrow();

        assertThat(answer.rows()).hasSize(12).allSatisfy(row -> {
            double expected = answer.peak().torque().toNewtonMeters()
                    * row.gear().totalRatio()
                    * row.gear().efficiency();
            assertThat(row.wheels().total().toNewtonMeters()).isCloseTo(expected, within(1e-9 * expected));
            assertThat(row.driveshaft().isLessThan(row.halfShafts())).isTrue();
        });
        assertThat(answer.rows().get(0).gear().totalRatio())
                .isGreaterThan(answer.rows().get(9).gear().totalRatio());
        assertThat(answer.rows().subList(10, 12))
                .allSatisfy(row -> assertThat(row.gear().reverse()).isTrue());
    }

    @Test
    void sparesTheHalfShaftsTheHubReduction() {
        WheelTorqueAnswer.Row plain =
                WheelTorqueAnswer.of(Builds.crawler()).orThrow().rows().get(0);
        WheelTorqueAnswer.Row geared = WheelTorqueAnswer.of(Builds.of(Builds.CRAWLER.with(Slot.HUBS, "24/16")))
                .orThrow()
                .rows()
                .get(0);

        assertThat(geared.halfShafts()).isEqualTo(plain.halfShafts());
        assertThat(geared.wheels().total().isGreaterThan(plain.wheels().total()))
                .isTrue();
    }

    @Test
    void sharesTheTorqueAsTheTransferCaseTiesTheAxles() {
        WheelTorqueAnswer open = WheelTorqueAnswer.of(Builds.of(Builds.CRAWLER.with(Slot.TRANSFER, "1.00 4.00 open")))
                .orThrow();

        assertThat(open.tie()).isEqualTo(AxleTie.OPEN);
        assertThat(open.cautions()).hasSize(1);
        assertThat(open.rows()).allSatisfy(row -> assertThat(row.wheels().tie()).isEqualTo(AxleTie.OPEN));
        assertThat(WheelTorqueAnswer.of(Builds.crawler()).orThrow().cautions()).hasSize(2);
    }

    @Test
    void multipliesAtStallWithAConverterAndNotWithAClutch() {
        assertThat(WheelTorqueAnswer.of(Builds.tourer()).orThrow().stallMultiplication())
                .hasValue(2.0);
        assertThat(WheelTorqueAnswer.of(Builds.crawler()).orThrow().stallMultiplication())
                .hasValue(1.0);
    }

    @Test
    void assumesEachEfficiencyOnce() {
        WheelTorqueAnswer answer = WheelTorqueAnswer.of(Builds.crawler()).orThrow();

        assertThat(answer.assumptions())
                .isNotEmpty()
                .doesNotHaveDuplicates()
                .containsAll(answer.engine().assumptions());
        assertThat(answer.findings()).isEqualTo(answer.engine().findings());
        Whole.assertWorkedOut(answer);
    }

    @Test
    void needsNoTireButEngineAndTrain() {
        assertThat(WheelTorqueAnswer.of(Builds.of(Builds.CRAWLER.without(Slot.TIRE)))
                        .value())
                .isPresent();
        assertThat(WheelTorqueAnswer.of(Builds.of(Builds.CRAWLER.without(Slot.ENGINE)))
                        .reason())
                .contains("no engine is chosen");
        assertThat(WheelTorqueAnswer.of(Builds.of(Builds.CRAWLER.without(Slot.TRANSMISSION)))
                        .reason())
                .contains("no transmission is chosen");
    }
}
