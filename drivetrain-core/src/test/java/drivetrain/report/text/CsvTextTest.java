package drivetrain.report.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Cell;
import drivetrain.report.Column;
import drivetrain.report.Facts;
import drivetrain.report.Facts.Fact;
import drivetrain.report.Grid;
import drivetrain.report.Report;
import drivetrain.report.Sentence;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** CSV as a strict reader of RFC 4180 reads it. */
class CsvTextTest {

    private static List<Map<String, String>> parsed(Report report, UnitSystem units) {
        return Rfc4180.records(CsvText.of(report, Page.endless(units)));
    }

    private static Report facts(Fact... facts) {
        return Report.of("test", new Facts("facts", "", List.of(facts)));
    }

    /** The examples of RFC 4180, section 2, rules 5 to 7, with a header. */
    @Test
    void isReadByAReaderThatReadsTheExamplesOfTheStandard() {
        String examples =
                "a,b,c\r\n\"aaa\",\"bbb\",\"ccc\"\r\n\"aaa\",\"b\r\nbb\",\"ccc\"\r\n\"aaa\",\"b\"\"bb\",\"ccc\"\r\n";

        assertThat(Rfc4180.records(examples))
                .extracting(record -> record.get("b"))
                .containsExactly("bbb", "b\r\nbb", "b\"bb");
        for (String wrong :
                List.of("a\n", "a\r\nb,c\r\n", "a\r\n\"b\r\n", "a\r\nb\"c\r\n", "a,a\r\n", "a\r\nb\tc\r\n")) {
            assertThatIllegalArgumentException().isThrownBy(() -> Rfc4180.records(wrong));
        }
    }

    @Test
    void readsBackEveryNumberInFull() {
        Report report = SampleReports.cruise();

        List<Map<String, String>> rows = parsed(report, UnitSystem.METRIC).stream()
                .filter(row -> row.get("block").equals("speeds"))
                .toList();

        Grid grid = SampleReports.speeds();
        assertThat(rows).hasSize(6);
        for (int row = 0; row < 6; row++) {
            Figure speed = ShownColumn.figure(grid.rows().get(row).get(2)).orElseThrow();
            assertThat(Double.parseDouble(rows.get(row).get("roadSpeed [km/h]")))
                    .isEqualTo(speed.number(UnitSystem.METRIC));
        }
    }

    @Test
    void givesEveryLineOfARandomReportTheFieldsOfTheHead() {
        RandomReports reports = new RandomReports(11);
        for (int count = 0; count < 100; count++) {
            for (UnitSystem units : UnitSystem.values()) {
                List<Map<String, String>> rows = parsed(reports.next(), units);
                assertThat(rows).allSatisfy(row -> assertThat(row).containsKeys("question", "block", "text"));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain", "a, b", "say \"so\"", " spaces around ", "\"", ",", "it's"})
    void readsBackText(String text) {
        assertThat(parsed(Report.of("test", Sentence.answer(text)), UnitSystem.US)
                        .get(0))
                .containsEntry("text", text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "@sum", "+1", "-1", "  =1"})
    void keepsSpreadsheetsFromCalculatingText(String text) {
        assertThat(parsed(Report.of("test", Sentence.answer(text)), UnitSystem.US)
                        .get(0))
                .containsEntry("text", "'" + text);
    }

    @Test
    void leavesNegativeNumbersAlone() {
        assertThat(parsed(facts(Fact.of("error", "error", Figure.percent(-0.05, 1))), UnitSystem.US))
                .containsExactly(Map.of(
                        "question", "test", "block", "facts", "name", "error", "value", "-5", "unit", "%", "text", ""));
    }

    @Test
    void givesBothSystemsBesideEachOther() {
        Map<String, String> row = parsed(facts(Fact.of("speed", "speed", SampleReports.speed(44.704))), UnitSystem.BOTH)
                .get(0);

        assertThat(row).containsEntry("unit", "mph").containsEntry("metricUnit", "km/h");
        assertThat(Double.parseDouble(row.get("value"))).isEqualTo(100.0);
        assertThat(Double.parseDouble(row.get("metricValue")))
                .isEqualTo(SampleReports.speed(44.704).number(UnitSystem.METRIC));
    }

    @Test
    void saysWhyAFigureIsMissing() {
        assertThat(parsed(SampleReports.cruise(), UnitSystem.BOTH))
                .filteredOn(row -> "6th high".equals(row.get("gear")))
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .containsEntry("wheelTorque [lb\u00B7ft]", "")
                        .containsEntry(
                                "text", "wheelTorque not evaluated because no efficiency is known for 6th gear"));
    }

    @Test
    void keepsColumnsOfATableApartFromItsOwn() {
        Grid grid = new Grid(
                "parts",
                "",
                List.of(Column.ofText("name", "name"), Column.ofText("block", "block")),
                List.of(List.of(Cell.of("axle"), Cell.of("rear"))));

        assertThat(parsed(Report.of("test", grid), UnitSystem.US).get(0))
                .containsEntry("block", "parts")
                .containsEntry("name", "")
                .containsEntry("tableName", "axle")
                .containsEntry("tableBlock", "rear");
    }

    @Test
    void givesAColumnOfManyUnitsAColumnForTheUnit() {
        Grid grid = new Grid(
                "inputs",
                "",
                List.of(Column.ofText("name", "name"), Column.ofFigures("size", "size")),
                List.of(
                        List.of(Cell.of("speed"), Cell.of(SampleReports.speed(44.704))),
                        List.of(Cell.of("ratio"), Cell.of(Figure.plain(4.1, 2)))));

        List<Map<String, String>> rows = parsed(Report.of("test", grid), UnitSystem.BOTH);

        assertThat(rows.get(0))
                .containsEntry("size unit", "mph")
                .hasEntrySatisfying(
                        "size metricValue", value -> assertThat(value).startsWith("160.93"))
                .containsEntry("size metricUnit", "km/h");
        assertThat(rows.get(1)).containsEntry("size", "4.1").containsEntry("size unit", "");
    }
}
