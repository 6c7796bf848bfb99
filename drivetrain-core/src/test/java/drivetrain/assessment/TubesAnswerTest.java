package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Combination;
import drivetrain.combination.Specification;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import org.junit.jupiter.api.Test;

class TubesAnswerTest {

    private static final Length LENGTH = Length.ofMillimeters(1200);

    @Test
    void takesTheGreatestSpeedThatTheEngineGivesTheShaft() {
        TubesAnswer answer = TubesAnswer.atGreatest(Builds.crawler(), LENGTH).orThrow();

        assertThat(answer.sizing().speed().toRpm()).isCloseTo(6000 / 0.75, within(1e-6));
        assertThat(answer.fastest().where()).isEqualTo("engine at its maximum in 5th high");
        assertThat(answer.assumptions()).hasSizeGreaterThan(1);
        assertThat(answer.cautions()).isNotEmpty();
        assertThat(answer.findings()).isEmpty();
    }

    @Test
    void takesTheSpeedThatIsAsked() {
        TubesAnswer answer = TubesAnswer.at(Builds.crawler(), LENGTH, AngularSpeed.ofRpm(4000));

        assertThat(answer.sizing().smallest()).isPresent();
        assertThat(answer.working().steps()).isNotEmpty();
        assertThat(TubesAnswer.at(Builds.crawler(), Length.ofMeters(4), AngularSpeed.ofRpm(9000))
                        .assumptions())
                .hasSize(1);
    }

    @Test
    void saysWhatIsMissing() {
        Combination nothing = Builds.of(Specification.empty());

        assertThat(TubesAnswer.atGreatest(nothing, LENGTH).reason()).isPresent();
    }
}
