package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.tire.TireCautions;
import java.util.List;
import org.junit.jupiter.api.Test;

class TireAnswerTest {

    private static List<Finding> findings(Combination build) {
        return TireAnswer.of(build).orThrow().findings();
    }

    @Test
    void holdsEachTireAgainstItsAxle() {
        assertThat(findings(Builds.tourer()).subList(0, 2))
                .extracting(Finding::checked)
                .containsExactly("front tire load", "rear tire load");
        assertThat(findings(Builds.tourer()).subList(0, 2))
                .allSatisfy(finding -> assertThat(finding.verdict()).isNotEqualTo(Verdict.NOT_EVALUATED));
    }

    @Test
    void findsAnAxleTooHeavy() {
        Combination heavy = Builds.of(Builds.CRAWLER.with(Slot.VEHICLE, "front 1200 kg rear 4000 kg"));

        assertThat(findings(heavy).get(1).verdict()).isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void countsFourTiresOnADualAxle() {
        String tire = "LT235/85R16 120/116Q rollout 2460 mm";
        Combination single =
                Builds.of(Builds.CRAWLER.with(Slot.TIRE, tire).with(Slot.VEHICLE, "front 1200 kg rear 4000 kg"));
        Combination dual =
                Builds.of(Builds.CRAWLER.with(Slot.TIRE, tire).with(Slot.VEHICLE, "front 1200 kg rear 4000 kg dual"));

        assertThat(findings(single).get(1).verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(findings(dual).get(1).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void evaluatesNoLoadThatIsNotGiven() {
        assertThat(findings(Builds.of(Builds.CRAWLER.without(Slot.VEHICLE))).subList(0, 2))
                .extracting(Finding::statement)
                .containsOnly("no vehicle is chosen");
        assertThat(findings(Builds.of(Builds.CRAWLER.with(Slot.VEHICLE, "mass 1900 kg")))
                        .subList(0, 2))
                .extracting(Finding::statement)
                .containsOnly("the vehicle's axle load is not given");
    }

    @Test
    void comparesFrontAndRearOnlyWhereTheyDiffer() {
        Combination mixed = Builds.of(Builds.CRAWLER.with(Slot.FRONT_TIRE, "33x12.50R15LT 108Q rollout 2515 mm"));
        TireAnswer answer = TireAnswer.of(mixed).orThrow();

        assertThat(answer.frontTire()).isNotEqualTo(answer.tire());
        assertThat(answer.findings().size())
                .isGreaterThan(findings(Builds.crawler()).size());
        assertThat(answer.findings().get(answer.findings().size() - 1).verdict())
                .isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void saysWhatItRestsOn() {
        TireAnswer answer = TireAnswer.of(Builds.of(Builds.CRAWLER.with(Slot.TIRE, "285/75R16")))
                .orThrow();

        assertThat(answer.assumptions())
                .isNotEmpty()
                .doesNotHaveDuplicates()
                .containsAll(answer.rolling().orThrow().assumptions())
                .containsAll(answer.overallDiameter().orThrow().assumptions());
        assertThat(answer.cautions()).isEqualTo(TireCautions.all());
        Whole.assertWorkedOut(answer);
    }

    @Test
    void saysThatNoTireIsChosen() {
        assertThat(TireAnswer.of(Builds.of(Builds.CRAWLER.without(Slot.TIRE))).reason())
                .contains("no tire is chosen");
    }
}
