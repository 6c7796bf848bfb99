package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.combination.Combination;
import drivetrain.combination.Specification;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class QuestionTest {

    @ParameterizedTest
    @EnumSource(Question.class)
    void isFoundByItsWord(Question question) {
        assertThat(Question.ofWord(question.word())).contains(question);
        assertThat(question.meaning()).isNotBlank();
    }

    @Test
    void isNotFoundByAnythingElse() {
        assertThat(Question.ofWord("Cruise")).isEmpty();
        assertThat(Question.ofWord("")).isEmpty();
    }

    @Test
    void listsItsWordsInOrder() {
        assertThat(Question.words())
                .containsExactly(
                        "cruise",
                        "speeds",
                        "crawl",
                        "torque",
                        "shifts",
                        "speedometer",
                        "engine",
                        "tire",
                        "shafts",
                        "critical",
                        "torsion",
                        "travel",
                        "pull",
                        "top",
                        "grip",
                        "loads",
                        "converter",
                        "supply",
                        "tank");
    }

    @ParameterizedTest
    @EnumSource(Question.class)
    void asksWhatTheAssessmentAsks(Question question) {
        Combination tourer = Builds.tourer();

        assertThat(question.of(tourer).value()).isPresent();
        assertThat(question.of(tourer).value().orElseThrow().getClass())
                .isEqualTo(Assessment.of(tourer)
                        .answers()
                        .get(question)
                        .value()
                        .orElseThrow()
                        .getClass());
    }

    @ParameterizedTest
    @EnumSource(Question.class)
    void worksItsAnswerOut(Question question) {
        Whole.assertWorkedOut(question.of(Builds.tourer()).value().orElseThrow());
        question.of(Builds.crawler()).value().ifPresent(Whole::assertWorkedOut);
    }

    @Test
    void doesNotAskAboutCruiseWithoutASpeed() {
        Combination idle = Builds.of(new Specification(
                "",
                Builds.TOURER.choices(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                ""));

        assertThat(Question.CRUISE.of(idle).reason()).contains("the order names no cruise speed");
    }
}
