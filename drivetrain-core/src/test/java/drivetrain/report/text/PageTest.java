package drivetrain.report.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drivetrain.finding.Working;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Cautions;
import drivetrain.report.Cell;
import drivetrain.report.Column;
import drivetrain.report.Facts;
import drivetrain.report.Facts.Fact;
import drivetrain.report.Grid;
import drivetrain.report.Notes;
import drivetrain.report.Report;
import drivetrain.report.Sentence;
import drivetrain.report.Steps;
import drivetrain.report.Verdicts;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class PageTest {

    @Test
    void takesATinyScreenAsTheLeastOne() {
        Page page = Page.screen(UnitSystem.US, 3, 1);

        assertThat(page.width()).hasValue(Page.LEAST_WIDTH);
        assertThat(page.height()).isEqualTo(Page.LEAST_HEIGHT);
    }

    @Test
    void rejectsSizesThatCannotBeKept() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Page(UnitSystem.US, Signs.ASCII, OptionalInt.of(19), 24, Styler.NONE))
                .withMessageContaining("20");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Page(UnitSystem.US, Signs.ASCII, OptionalInt.empty(), 9, Styler.NONE))
                .withMessageContaining("10");
    }

    @Test
    void leavesNoGapForEmptyBlocks() {
        Report report = Report.of(
                "test",
                Sentence.answer("Yes."),
                Notes.of(List.of()),
                Verdicts.of(List.of()),
                Cautions.of(List.of()),
                new Facts("facts", "", List.of()),
                new Sentence("end", "No."));

        assertThat(TableText.of(report, Page.endless(UnitSystem.US))).isEqualTo("Yes.\n\nNo.\n");
    }

    @Test
    void saysNoneWhereThereIsNothing() {
        Report report = Report.of(
                "test",
                new Grid("parts", "Parts", List.of(Column.ofText("name", "name")), List.of()),
                new Facts("facts", "", List.of(new Fact("notes", "notes", Cell.empty()))));

        assertThat(TableText.of(report, Page.endless(UnitSystem.US))).isEqualTo("Parts\n  none\n\n  notes  none\n");
        assertThat(PlainText.of(report, Page.endless(UnitSystem.US))).isEqualTo("table: Parts\nnotes: none\n");
    }

    @Test
    void listsAColumnThatStandsAlone() {
        Grid grid = new Grid(
                "parts",
                "",
                List.of(Column.ofText("name", "name")),
                List.of(List.of(Cell.of("a")), List.of(Cell.of("b"))));

        assertThat(PlainText.of(Report.of("test", grid), Page.endless(UnitSystem.US)))
                .isEqualTo("name: a\nname: b\n");
    }

    @Test
    void writesAWorkingWithoutInputsAndSources() {
        Report report = Report.of(
                "test",
                Steps.of(Working.of("wheel speed")
                        .step("wheel speed", "n", SampleReports.rpm(5))
                        .build()));

        assertThat(TableText.of(report, Page.endless(UnitSystem.US)))
                .isEqualTo("Working: wheel speed\n  1. wheel speed: n = 5 rpm\n");
        assertThat(MarkdownText.of(report, Page.endless(UnitSystem.US)))
                .isEqualTo("### Working: wheel speed\n\n1. wheel speed: n = 5 rpm\n");
    }
}
