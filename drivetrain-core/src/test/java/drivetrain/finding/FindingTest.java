package drivetrain.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Mass;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingTest {

    private static final Source RULE = Source.commonPractice("keep a tenth in hand");
    private static final Figure LOAD = Figure.of(Mass.ofKilograms(900), Display.MASS);
    private static final Figure LIMIT = Figure.of(Mass.ofKilograms(1000), Display.MASS);
    private static final Figure MARGIN = Figure.of(Mass.ofKilograms(100), Display.MASS);

    private static Finding with(Verdict verdict) {
        return Finding.of("load", LOAD, verdict, "so it is", RULE);
    }

    @Test
    void reportsValueLimitAndMargin() {
        Finding finding = Finding.of("front tire load", LOAD, LIMIT, MARGIN, Verdict.MET, "the tire carries it", RULE);

        assertThat(finding.value()).hasValue(LOAD);
        assertThat(finding.limit()).hasValue(LIMIT);
        assertThat(finding.margin()).hasValue(MARGIN);
        assertThat(finding.verdict()).isEqualTo(Verdict.MET);
        assertThat(finding.checked()).isEqualTo("front tire load");
        assertThat(finding.rule()).isEqualTo(RULE);
    }

    @Test
    void canBeJudgedOtherwise() {
        Finding found =
                Finding.notEvaluated("tire load", "the axle load is not given", Source.derived("load capacity"));
        Finding judged = found.judged(Verdict.MARGINAL, "is left to the driver");

        assertThat(judged.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judged.statement()).isEqualTo("is left to the driver");
        assertThat(judged.judged(found.verdict(), found.statement())).isEqualTo(found);
    }

    @Test
    void leavesOutALimitThatIsNotOneNumber() {
        assertThat(with(Verdict.MARGINAL).value()).hasValue(LOAD);
        assertThat(with(Verdict.MARGINAL).limit()).isEmpty();
        assertThat(with(Verdict.MARGINAL).margin()).isEmpty();
    }

    @Test
    void saysWhyACheckWasNotMade() {
        Finding finding = Finding.notEvaluated("front tire load", "the axle load is not known", RULE);

        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_EVALUATED);
        assertThat(finding.statement()).isEqualTo("the axle load is not known");
        assertThat(finding.value()).isEmpty();
    }

    @Test
    void theWorstFindingDecides() {
        assertThat(Finding.worst(List.of())).isEqualTo(Verdict.NOT_EVALUATED);
        assertThat(Finding.worst(List.of(with(Verdict.MET), with(Verdict.MET)))).isEqualTo(Verdict.MET);
        assertThat(Finding.worst(List.of(with(Verdict.MET), Finding.notEvaluated("x", "y", RULE))))
                .isEqualTo(Verdict.NOT_EVALUATED);
        assertThat(Finding.worst(List.of(with(Verdict.EXCEEDED), with(Verdict.MARGINAL))))
                .isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void verdictsAreOrderedFromBestToWorst() {
        assertThat(Verdict.values())
                .containsExactly(Verdict.MET, Verdict.NOT_EVALUATED, Verdict.MARGINAL, Verdict.EXCEEDED);
        for (Verdict a : Verdict.values()) {
            for (Verdict b : Verdict.values()) {
                assertThat(a.worse(b)).isEqualTo(b.worse(a)).isEqualTo(a.compareTo(b) > 0 ? a : b);
            }
        }
        assertThat(Arrays.stream(Verdict.values()).map(Verdict::label))
                .containsExactly("met", "not evaluated", "marginal", "exceeded");
    }

    @Test
    void sourcesSayHowGoodTheyAre() {
        assertThat(Source.standard("UN Regulation 39, 5.3")).hasToString("UN Regulation 39, 5.3 [standard]");
        assertThat(Source.handbook("x").kind()).isEqualTo(SourceClass.HANDBOOK);
        assertThat(Source.derived("x").kind()).isEqualTo(SourceClass.DERIVED);
        assertThat(Source.commonPractice("x").kind()).isEqualTo(SourceClass.COMMON_PRACTICE);
        assertThat(Source.fromMemory("x").kind()).isEqualTo(SourceClass.FROM_MEMORY);
        assertThat(Source.given("the order").kind()).isEqualTo(SourceClass.GIVEN);
        assertThat(Arrays.stream(SourceClass.values()).filter(SourceClass::isUncertain))
                .containsExactly(SourceClass.COMMON_PRACTICE, SourceClass.FROM_MEMORY);
        assertThatThrownBy(() -> Source.standard(" ")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anAssumptionIsFlaggedByItsSourceOrByHand() {
        assertThat(Assumption.of("rolling circumference", "measured", Source.given("the order"))
                        .flagged())
                .isFalse();
        assertThat(Assumption.of("rolling circumference", "by rule", RULE).flagged())
                .isTrue();
        assertThat(Assumption.flagged("slip", "taken as 3 %", Source.standard("x"))
                        .flagged())
                .isTrue();
    }

    @Test
    void aCautionNamesItsHazard() {
        assertThat(new Caution("tire", "Do not exceed the pressure on the sidewall.").hazard())
                .isEqualTo("tire");
    }
}
