package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Slot;
import org.junit.jupiter.api.Test;

class EngineAnswerTest {

    @Test
    void tellsTheGreatestTorqueAndPower() {
        EngineAnswer answer = EngineAnswer.of(Builds.crawler()).orThrow();

        assertThat(answer.peakTorque().orThrow().torque().toPoundFeet()).isCloseTo(370.0, within(0.5));
        assertThat(answer.peakPower().orThrow().power().toHorsepower()).isCloseTo(350.0, within(0.5));
    }

    @Test
    void saysWhatItRestsOn() {
        EngineAnswer answer = EngineAnswer.of(Builds.crawler()).orThrow();

        assertThat(answer.assumptions()).isEqualTo(answer.engine().assumptions());
        assertThat(answer.findings()).isEqualTo(answer.engine().findings());
        assertThat(answer.cautions()).isEmpty();
        Whole.assertWorkedOut(answer);
    }

    @Test
    void saysThatNoEngineIsChosen() {
        assertThat(EngineAnswer.of(Builds.of(Builds.CRAWLER.without(Slot.ENGINE)))
                        .reason())
                .contains("no engine is chosen");
    }
}
