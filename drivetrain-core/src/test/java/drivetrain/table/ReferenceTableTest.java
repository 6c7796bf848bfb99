package drivetrain.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.finding.Source;
import drivetrain.finding.SourceClass;
import drivetrain.refusal.Place;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReferenceTableTest {

    private static final String HEADER = """
            # title: Invented values
            # source: a test of our own
            # class: derived
            # obtained: written for this test
            # units: symbol none; speed km/h
            # add-rows: below the last row,
            # add-rows: in order of speed
            """;
    private static final String TABLE = HEADER + """
            symbol,speed,class,source

            P, 150 ,,
            Q,160,from memory,
            R,170,standard,UN Regulation 30
            """;

    private static String refusalOf(String text) {
        try {
            ReferenceTable.parse("tire/test.csv", text);
        } catch (RefusedException e) {
            return e.getMessage();
        }
        throw new AssertionError("not refused");
    }

    @Test
    void readsHeaderColumnsAndRowsInOrder() {
        ReferenceTable table = ReferenceTable.parse("tire/test.csv", TABLE);

        assertThat(table.name()).isEqualTo("tire/test.csv");
        assertThat(table.header().keySet())
                .containsExactly("title", "source", "class", "obtained", "units", "add-rows");
        assertThat(table.header()).containsEntry("add-rows", "below the last row, in order of speed");
        assertThat(table.columns()).containsExactly("symbol", "speed", "class", "source");
        assertThat(table.rows()).extracting(row -> row.text("symbol")).containsExactly("P", "Q", "R");
        assertThat(table.rows().get(0).cells().keySet()).containsExactlyElementsOf(table.columns());
        assertThat(table.rows()).extracting(row -> row.integer("speed")).containsExactly(150, 160, 170);
        assertThat(table.source()).isEqualTo(Source.derived("a test of our own"));
    }

    @Test
    void readsLinesOfAnyEndingAndIgnoresBlankOnes() {
        assertThat(ReferenceTable.parse("t", TABLE.replace("\n", "\r\n\r\n")).rows())
                .hasSize(3);
        assertThat(ReferenceTable.parse("t", TABLE.stripTrailing()).rows()).hasSize(3);
    }

    @Test
    void aRowSpeaksForItsOwnSource() {
        ReferenceTable table = ReferenceTable.parse("tire/test.csv", TABLE);

        assertThat(table.rows().get(0).source()).isEqualTo(Source.derived("a test of our own"));
        assertThat(table.rows().get(1).source()).isEqualTo(Source.fromMemory("a test of our own"));
        assertThat(table.rows().get(2).source()).isEqualTo(Source.standard("UN Regulation 30"));
        assertThat(table.rows().get(2).place()).isEqualTo(new Place("tire/test.csv", 12, 0));
    }

    @Test
    void cannotBeChanged() {
        ReferenceTable table = ReferenceTable.parse("t", TABLE);

        assertThatThrownBy(() -> table.header().clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> table.rows().get(0).cells().clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"title", "source", "class", "obtained", "units", "add-rows"})
    void refusesATableWithoutARequiredHeader(String key) {
        String text = TABLE.replaceAll("(?m)^# " + key + ":.*\\R", "");

        assertThat(refusalOf(text)).contains("tire/test.csv:", "\"" + key + "\"", "is missing in the header");
    }

    @Test
    void refusesAnUnknownSourceClass() {
        assertThat(refusalOf(TABLE.replace("# class: derived", "# class: rumor")))
                .isEqualTo("tire/test.csv:8: reference table \"rumor\": is not a source class");
        assertThat(refusalOf(TABLE.replace("from memory", "rumor")))
                .isEqualTo("tire/test.csv:11: reference table \"rumor\": is not a source class");
    }

    @Test
    void refusesMalformedHeaderLines() {
        assertThat(refusalOf("# no colon\n" + TABLE)).startsWith("tire/test.csv:1: reference table \"# no colon\"");
        assertThat(refusalOf(TABLE + "# note: too late\n"))
                .startsWith("tire/test.csv:13:")
                .contains("# note: too late");
    }

    @Test
    void refusesColumnsThatAreAlikeOrUnnamed() {
        assertThat(refusalOf(TABLE.replace("symbol,speed", "speed,speed")))
                .contains("column names must be given and differ");
        assertThat(refusalOf(TABLE.replace("symbol,speed", "symbol,")))
                .contains("column names must be given and differ");
    }

    @Test
    void refusesARowOfAnotherLengthWithFileLineAndText() {
        assertThat(refusalOf(TABLE.replace("Q,160,from memory,", "Q,160")))
                .isEqualTo("tire/test.csv:11: reference table \"Q,160\": has 2 cells where the columns are 4");
    }

    @Test
    void refusesQuotationMarks() {
        assertThat(refusalOf(TABLE.replace("Q,160", "\"Q\",160"))).contains("tire/test.csv:11:", "no quotation marks");
    }

    @Test
    void refusesTextThatIsNotUtf8() {
        assertThat(refusalOf(TABLE.replace("R,170", "R\uFFFD,170"))).contains("tire/test.csv:12:", "is not UTF-8");
    }

    @Test
    void refusesATableWithoutRows() {
        assertThat(refusalOf(HEADER + "symbol,speed\n"))
                .startsWith("tire/test.csv: ")
                .contains("has no rows");
        assertThat(refusalOf("")).contains("has no rows");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "fast", "1.5d", "0x10", "NaN", "Infinity", "1e999", "1 000", "\u0661"})
    void refusesACellThatIsNotANumber(String cell) {
        TableRow row =
                ReferenceTable.parse("t", TABLE.replace("150", cell)).rows().get(0);

        assertThatThrownBy(() -> row.number("speed"))
                .isInstanceOf(RefusedException.class)
                .hasMessageStartingWith("t:10: ")
                .hasMessageContaining("is not a number in column speed");
    }

    @ParameterizedTest
    @ValueSource(strings = {"150.5", "1e12", "-1e12"})
    void refusesACellThatIsNotAWholeNumber(String cell) {
        TableRow row =
                ReferenceTable.parse("t", TABLE.replace("150", cell)).rows().get(0);

        assertThat(row.number("speed")).isFinite();
        assertThatThrownBy(() -> row.integer("speed")).hasMessageContaining("is not a whole number in column speed");
    }

    @Test
    void refusesAColumnThatIsNotThere() {
        TableRow row = ReferenceTable.parse("t", TABLE).rows().get(0);

        assertThatThrownBy(() -> row.text("load")).hasMessageContaining("t:10:").hasMessageContaining("\"load\"");
    }

    @Test
    void refusesATableThatIsNotPacked() {
        assertThatThrownBy(() -> ReferenceTable.load("tire/no-such-table.csv"))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("tire/no-such-table.csv")
                .hasMessageContaining("is not packed with the library");
    }

    @Test
    void knowsEverySourceClass() {
        for (SourceClass known : SourceClass.values()) {
            assertThat(TableRow.sourceClass(known.label(), new Place("t", 1, 0)))
                    .isSameAs(known);
        }
    }
}
