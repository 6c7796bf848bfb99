package drivetrain.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.quantity.UnitSystem;
import drivetrain.report.Drawing;
import drivetrain.report.Report;
import drivetrain.report.Sentence;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

class ReportTreeTest {

    private static Object at(Object tree, Object... path) {
        Object place = tree;
        for (Object step : path) {
            place = step instanceof Integer index ? ((List<?>) place).get(index) : ((Map<?, ?>) place).get(step);
        }
        return place;
    }

    @Test
    void startsWithQuestionAndUnitsAndKeepsTheOrderOfBlocks() {
        assertThat(ReportTree.of(SampleReports.cruise(), UnitSystem.METRIC).keySet())
                .containsExactly(
                        "question", "units", "answer", "cruise", "speeds", "findings", "assumptions", "cautions");
    }

    @Test
    void putsTheUnitBesideTheNumber() {
        Map<String, Object> tree = ReportTree.of(SampleReports.cruise(), UnitSystem.US);

        assertThat(at(tree, "cruise", "engineSpeed")).isEqualTo(Map.of("value", 1829.4, "unit", "rpm"));
        assertThat(at(tree, "cruise", "totalRatio")).isEqualTo(Map.of("value", 2.747, "unit", ""));
        assertThat(at(tree, "units")).isEqualTo("us");
    }

    @Test
    void putsTheMetricFigureBesideTheOtherOnlyWhereUnitsDiffer() {
        Map<String, Object> tree = ReportTree.of(SampleReports.cruise(), UnitSystem.BOTH);

        assertThat(at(tree, "cruise", "roadSpeed", "metric", "unit")).isEqualTo("km/h");
        assertThat((Map<?, ?>) at(tree, "cruise", "engineSpeed")).hasSize(2);
    }

    @Test
    void saysWhyAFigureIsMissingAndLeavesOutWhatDoesNotBelong() {
        Map<String, Object> tree = ReportTree.of(SampleReports.cruise(), UnitSystem.US);

        assertThat(at(tree, "speeds", 5, "wheelTorque"))
                .isEqualTo(Map.of("notEvaluated", "no efficiency is known for 6th gear"));
        assertThat(((Map<?, ?>) at(tree, "speeds", 0)).containsKey("step")).isFalse();
    }

    @Test
    void namesVerdictRuleAndFlag() {
        Map<String, Object> tree = ReportTree.of(SampleReports.cruise(), UnitSystem.METRIC);

        assertThat(at(tree, "findings", 0, "verdict")).isEqualTo("exceeded");
        assertThat(at(tree, "findings", 0, "rule", "class")).isEqualTo("standard");
        assertThat(at(tree, "assumptions", 0, "flagged")).isEqualTo(true);
        assertThat(at(tree, "cautions", 0, "hazard")).isEqualTo("tire");
    }

    @Test
    void keepsStepsAndPoints() {
        Map<String, Object> working = ReportTree.of(SampleReports.explanation(), UnitSystem.US);
        Map<String, Object> plot =
                ReportTree.of(Report.of("torques", Drawing.of(SampleReports.torques())), UnitSystem.METRIC);

        assertThat(at(working, "working", "steps", 1, "formula")).isEqualTo("n = \u03C9 \u00B7 i");
        assertThat(at(working, "working", "inputs", 0, "figure", "unit")).isEqualTo("mph");
        assertThat(at(plot, "plot", "curves", 1, "mark")).isEqualTo("B");
        assertThat(at(plot, "plot", "curves", 1, "points", 1, "y", "value")).isEqualTo(730.0);
    }

    @Test
    void writesControlCharactersVisibly() {
        Report report = Report.of("test", Sentence.answer("\u001B[2J"));

        assertThat(ReportTree.of(report, UnitSystem.US)).containsEntry("answer", "\\u001B[2J");
    }

    @Test
    void isReadBackByAnotherParser() {
        JsonMapper mapper = JsonMapper.builder().build();
        RandomReports reports = new RandomReports(12);
        for (int count = 0; count < 100; count++) {
            Map<String, Object> tree = ReportTree.of(reports.next(), UnitSystem.BOTH);
            Object read = mapper.readValue(mapper.writeValueAsString(tree), Object.class);
            assertThat(read).isEqualTo(tree);
        }
    }
}
