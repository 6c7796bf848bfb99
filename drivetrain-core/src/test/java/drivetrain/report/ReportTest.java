package drivetrain.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.report.Facts.Fact;
import drivetrain.report.LinePlot.Curve;
import drivetrain.report.LinePlot.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReportTest {

    private static final Figure RATIO = Figure.plain(4.1, 2);
    private static final Source SOURCE = Source.derived("definition");

    @ParameterizedTest
    @ValueSource(strings = {"", "Cruise", "road speed", "road-speed", "1st", "caf\u00E9"})
    void rejectsMachineNamesThatAreNotCamelCase(String name) {
        assertThatIllegalArgumentException().isThrownBy(() -> Report.of(name));
        assertThatIllegalArgumentException().isThrownBy(() -> new Sentence(name, "text"));
        assertThatIllegalArgumentException().isThrownBy(() -> new Fact(name, "name", Cell.empty()));
        assertThatIllegalArgumentException().isThrownBy(() -> Column.ofText(name, "heading"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Steps(name, Working.of("q").build()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"answer", "question", "units"})
    void rejectsKeysThatAreTaken(String key) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Report.of("cruise", Sentence.answer("Yes."), new Sentence(key, "No.")))
                .withMessageContaining(key);
    }

    @Test
    void copiesItsBlocks() {
        List<Block> blocks = new ArrayList<>(List.of(Sentence.answer("Yes.")));
        Report report = new Report("cruise", blocks);

        blocks.clear();

        assertThat(report.blocks()).hasSize(1);
    }

    @Test
    void rejectsRaggedAndColumnlessTables() {
        Column gear = Column.ofText("gear", "gear");
        assertThatIllegalArgumentException().isThrownBy(() -> new Grid("grid", "", List.of(), List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Grid("grid", "", List.of(gear), List.of(List.of())))
                .withMessageContaining("allowed: 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Grid("grid", "", List.of(gear, gear), List.of()))
                .withMessageContaining("gear");
    }

    @Test
    void rejectsTwoFactsWithOneKeyAndNamelessOnes() {
        Fact ratio = Fact.of("ratio", "ratio", RATIO);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Facts("facts", "", List.of(ratio, ratio)))
                .withMessageContaining("ratio");
        assertThatIllegalArgumentException().isThrownBy(() -> Fact.of("ratio", " ", RATIO));
        assertThatIllegalArgumentException().isThrownBy(() -> Column.ofFigures("ratio", ""));
    }

    @Test
    void makesCellsFromOutcomesAndText() {
        assertThat(Cell.of(Outcome.of(RATIO))).isEqualTo(Cell.of(RATIO));
        assertThat(Cell.of(Outcome.<Figure>notEvaluated("no axle is chosen")))
                .isEqualTo(Cell.notEvaluated("no axle is chosen"));
        assertThat(Cell.of("  ")).isEqualTo(Cell.empty());
    }

    @Test
    void keepsAssumptionsAndCautionsOnce() {
        Assumption assumption = Assumption.of("converter", "the converter is locked", SOURCE);
        Caution caution = new Caution("tire", "A tire can burst.");

        assertThat(Notes.of(List.of(assumption, assumption)).assumptions()).containsExactly(assumption);
        assertThat(Cautions.of(List.of(caution, caution)).cautions()).containsExactly(caution);
    }

    @Test
    void putsTheWorstVerdictFirst() {
        Finding met = Finding.of("a", RATIO, Verdict.MET, "kept", SOURCE);
        Finding exceeded = Finding.of("b", RATIO, Verdict.EXCEEDED, "left", SOURCE);
        Finding missing = Finding.notEvaluated("c", "no tire is chosen", SOURCE);

        assertThat(Verdicts.of(List.of(met, missing, exceeded)).findings()).containsExactly(exceeded, missing, met);
    }

    @Test
    void rejectsDrawingsThatCannotBeTold() {
        Point plain = new Point(RATIO, RATIO);
        Figure rpm = Figure.of(AngularSpeed.KIND.of(1.0, AngularSpeed.RPM), Display.ROTATION);
        Curve curve = new Curve('a', "a", List.of(plain));

        assertThatIllegalArgumentException().isThrownBy(() -> new LinePlot("", "x", "y", List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LinePlot("", "x", "y", List.of(curve, curve)))
                .withMessageContaining("mark a");
        assertThatIllegalArgumentException().isThrownBy(() -> new Curve('a', "a", List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Curve('*', "a", List.of(plain)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Curve('\u00E9', "a", List.of(plain)));
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new LinePlot("", "x", "y", List.of(curve, new Curve('b', "b", List.of(new Point(rpm, RATIO))))))
                .withMessageContaining("rpm");
    }
}
