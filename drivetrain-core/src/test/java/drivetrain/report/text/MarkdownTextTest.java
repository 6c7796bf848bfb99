package drivetrain.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.quantity.UnitSystem;
import drivetrain.report.Cell;
import drivetrain.report.Column;
import drivetrain.report.Drawing;
import drivetrain.report.Facts;
import drivetrain.report.Grid;
import drivetrain.report.LinePlot;
import drivetrain.report.LinePlot.Curve;
import drivetrain.report.LinePlot.Point;
import drivetrain.report.Notes;
import drivetrain.report.Report;
import drivetrain.report.Sentence;
import drivetrain.report.Verdicts;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkdownTextTest {

    private static final Page PAGE = Page.endless(UnitSystem.US);

    @ParameterizedTest
    @CsvSource(
            delimiterString = "->",
            value = {
                "a | b->a \\| b",
                "*bold* _it_ `code`->\\*bold\\* \\_it\\_ \\`code\\`",
                "[x](http://y)->\\[x\\](http://y)",
                "<b>&amp;->&lt;b&gt;&amp;amp;",
                "# head ~~x~~ !->\\# head \\~\\~x\\~\\~ \\!",
                "back\\slash->back\\\\slash",
                "- item->\\- item",
                "+ item->\\+ item",
                "=== line->\\=== line",
                "1. item->1\\. item",
                "12) item->12\\) item",
                "65.0 mph->65.0 mph"
            })
    void escapesWhatMeansSomething(String text, String escaped) {
        assertThat(MarkdownText.of(Report.of("test", new Sentence("note", text)), PAGE))
                .isEqualTo(escaped + "\n");
    }

    @Test
    void keepsCellsInTheirColumns() {
        Grid grid = new Grid(
                "parts",
                "",
                List.of(Column.ofText("name", "na|me")),
                List.of(List.of(Cell.of("a|b\nc")), List.of(Cell.empty())));

        assertThat(MarkdownText.of(Report.of("test", grid), PAGE))
                .isEqualTo("| na\\|me |\n| --- |\n| a\\|b\\\\u000Ac |\n|  |\n");
    }

    @Test
    void writesNothingForEmptyBlocks() {
        Report report = Report.of(
                "test",
                new Facts("facts", "Facts", List.of()),
                Notes.of(List.of()),
                Verdicts.of(List.of()),
                Sentence.answer("Yes."));

        assertThat(MarkdownText.of(report, PAGE)).isEqualTo("**Yes.**\n");
    }

    @Test
    void fencesADrawingWhoseNamesHaveFences() {
        List<Point> points = List.of(new Point(SampleReports.rpm(1), SampleReports.speed(1)));
        LinePlot plot = new LinePlot("", "x", "y", List.of(new Curve('a', "```", points)));

        assertThat(MarkdownText.of(Report.of("test", Drawing.of(plot)), PAGE))
                .startsWith("````text\n")
                .endsWith("\n````\n");
    }
}
