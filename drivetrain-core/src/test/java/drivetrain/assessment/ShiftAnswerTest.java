package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Slot;
import drivetrain.quantity.AngularSpeed;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;

class ShiftAnswerTest {

    @Test
    void dropsTheEngineSpeedByTheStep() {
        ShiftAnswer answer =
                ShiftAnswer.at(Builds.crawler(), AngularSpeed.ofRpm(3000.0)).orThrow();

        assertThat(answer.high().shifts()).hasSize(4);
        assertThat(answer.high().shifts().get(0).after().toRpm()).isCloseTo(3000.0 * 3.04 / 5.61, within(1e-9));
        assertThat(answer.high().spread()).isCloseTo(5.61 / 0.75, within(1e-12));
    }

    @Test
    void placesTheLowRangeAmongTheHigh() {
        assertThat(ShiftAnswer.atMaximum(Builds.crawler()).orThrow().overlap().places())
                .isNotEmpty();
        assertThat(ShiftAnswer.atMaximum(Builds.of(Builds.CRAWLER.with(Slot.TRANSFER, "none")))
                        .orThrow()
                        .overlap()
                        .places())
                .isEmpty();
    }

    @Test
    void shiftsAtTheMaximumSpeedUnlessTold() {
        assertThat(ShiftAnswer.atMaximum(Builds.crawler())
                        .orThrow()
                        .high()
                        .shiftSpeed()
                        .toRpm())
                .isCloseTo(6000.0, within(1e-9));
    }

    @Test
    void restsOnNothingButTheRatios() {
        ShiftAnswer answer = ShiftAnswer.atMaximum(Builds.crawler()).orThrow();

        assertThat(answer.assumptions()).isEmpty();
        assertThat(answer.findings()).isEmpty();
        assertThat(answer.cautions()).isEmpty();
        Whole.assertWorkedOut(answer);
    }

    @Test
    void saysWhatIsMissingAndRefusesAShiftSpeedOfZero() {
        assertThat(ShiftAnswer.atMaximum(Builds.of(Builds.CRAWLER.without(Slot.ENGINE)))
                        .reason())
                .contains("no engine is chosen");
        assertThat(ShiftAnswer.atMaximum(Builds.of(Builds.CRAWLER.without(Slot.TRANSFER)))
                        .reason())
                .contains("no transfer case is chosen");
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> ShiftAnswer.at(Builds.crawler(), AngularSpeed.ofRpm(0.0)))
                .withMessageContaining("shift speed");
    }
}
