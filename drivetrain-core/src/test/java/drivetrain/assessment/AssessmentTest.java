package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Speed;
import drivetrain.tire.TireCautions;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AssessmentTest {

    private static List<Question> missing(Assessment assessment) {
        return Arrays.stream(Question.values())
                .filter(question -> assessment.answers().get(question).value().isEmpty())
                .toList();
    }

    @Test
    void answersEveryQuestionInTheirOrder() {
        Assessment tourer = Assessment.of(Builds.tourer());

        assertThat(tourer.answers().keySet()).containsExactly(Question.values());
        assertThat(missing(tourer)).isEmpty();
        assertThat(tourer.cruiseSpeed()).contains(Speed.ofMilesPerHour(70.0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "VEHICLE; SPEEDOMETER PULL TOP GRIP",
                "ENGINE; SPEEDS TORQUE SHIFTS ENGINE PULL TOP CONVERTER SUPPLY",
                "TRANSMISSION; CRUISE SPEEDS CRAWL TORQUE SHIFTS SPEEDOMETER TORSION PULL TOP GRIP LOADS CONVERTER",
                "TRANSFER; CRUISE SPEEDS CRAWL TORQUE SHIFTS SPEEDOMETER TORSION PULL TOP GRIP LOADS CONVERTER",
                "REAR_AXLE; CRUISE SPEEDS CRAWL TORQUE SHIFTS SPEEDOMETER TORSION PULL TOP GRIP LOADS CONVERTER",
                "FRONT_AXLE; ",
                "TIRE; CRUISE SPEEDS SPEEDOMETER TIRE PULL TOP",
                "REAR_SHAFT; SHAFTS CRITICAL TORSION TRAVEL"
            })
    void leavesOnlyTheAnswersOutThatNeedTheMissingPart(Slot slot, String questions) {
        List<Question> expected = questions == null
                ? List.of()
                : Arrays.stream(questions.split(" ")).map(Question::valueOf).toList();
        Assessment assessment = Assessment.of(Builds.of(Builds.TOURER.without(slot)));

        assertThat(missing(assessment)).isEqualTo(expected);
        assertThat(assessment.answers().values())
                .allSatisfy(outcome -> outcome.reason()
                        .ifPresent(reason -> assertThat(reason).isEqualTo("no " + slot.word() + " is chosen")));
    }

    @Test
    void answersNothingWhenNothingIsChosen() {
        Assessment none = Assessment.of(Builds.of(Specification.empty()));

        assertThat(missing(none)).containsExactly(Question.values());
        assertThat(none.cruise().reason()).contains("the order names no cruise speed");
        assertThat(none.verdict()).isEqualTo(Verdict.NOT_EVALUATED);
        assertThat(none.assumptions()).isEmpty();
        assertThat(none.cautions()).isEmpty();
        assertThat(none.findings()).hasSize(2);
    }

    @Test
    void holdsTheShaftsAgainstTheirTorque() {
        assertThat(checked(Builds.TOURER))
                .contains(
                        "rear shaft tube, tires slip on dry asphalt: not evaluated",
                        "rear shaft joints, tires slip on dry asphalt: met");
        assertThat(checked(Builds.TOURER.with(
                        Slot.REAR_SHAFT, "tube 1.5 in x 0.083 in of steel-1020-drawn, length 1290 mm")))
                .contains("rear shaft tube, tires slip on dry asphalt: exceeded");
    }

    /** A shaft about which something is not known is told what that is; a package without shafts is not asked. */
    @Test
    void saysWhatIsMissingForAShaft() {
        assertThat(Assessment.of(Builds.of(Builds.TOURER.without(Slot.REAR_LINE).without(Slot.TRANSMISSION)))
                        .findings())
                .filteredOn(finding -> finding.checked().startsWith("rear shaft"))
                .extracting(finding -> finding.checked() + ": " + finding.statement())
                .contains(
                        "rear shaft, motion at speed: the line of the rear shaft is not measured",
                        "rear shaft strength: no transmission is chosen")
                .anyMatch(text ->
                        text.startsWith("rear shaft, critical speed: the length of the rear shaft is not known"));
        assertThat(checked(Builds.CRAWLER)).noneMatch(text -> text.contains("shaft strength"));
    }

    private static List<String> checked(Specification order) {
        return Assessment.of(Builds.of(order)).findings().stream()
                .map(finding -> finding.checked() + ": " + finding.verdict().label())
                .toList();
    }

    @Test
    void judgesByTheWorstFinding() {
        assertThat(Assessment.of(Builds.tourer()).verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(Assessment.of(Builds.crawler()).verdict()).isEqualTo(Verdict.MARGINAL);
    }

    @Test
    void checksEverythingOnce() {
        assertThat(Assessment.of(Builds.tourer()).findings()).doesNotHaveDuplicates();
        assertThat(Assessment.of(Builds.tourer()).findings())
                .extracting(Finding::checked)
                .contains("front and rear axle", "gearing limit tire speed", "cruise tire speed", "rear tire load");
    }

    @Test
    void gathersAssumptionsAndCautionsOnce() {
        Assessment tourer = Assessment.of(Builds.tourer());

        assertThat(tourer.assumptions()).isNotEmpty().doesNotHaveDuplicates();
        assertThat(tourer.cautions()).doesNotHaveDuplicates().containsAll(TireCautions.all());
        assertThat(tourer.cautions())
                .extracting(Caution::hazard)
                .contains("tied axles", "speedometer", "rotating shafts");
        for (Outcome<? extends Answer> outcome : tourer.answers().values()) {
            assertThat(tourer.assumptions())
                    .containsAll(outcome.value().orElseThrow().assumptions());
            assertThat(tourer.cautions())
                    .containsAll(outcome.value().orElseThrow().cautions());
        }
    }

    @Test
    void letsNobodyChangeItsFindings() {
        assertThatExceptionOfType(UnsupportedOperationException.class)
                .isThrownBy(() -> Assessment.of(Builds.tourer()).findings().clear());
    }
}
