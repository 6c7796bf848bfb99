package drivetrain.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.quantity.UnitSystem;
import drivetrain.report.Drawing;
import drivetrain.report.Report;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole answers against the files kept for them. */
class WrittenReportsRegressionTest {

    private static final Map<String, Report> REPORTS = Map.of(
            "cruise", SampleReports.cruise(),
            "explain", SampleReports.explanation(),
            "plot", SampleReports.plot(),
            "torques", Report.of("torques", Drawing.of(SampleReports.torques())));

    @ParameterizedTest
    @CsvSource({
        "cruise, 40, UNICODE, US",
        "cruise, 40, ASCII, BOTH",
        "cruise, 60, UNICODE, METRIC",
        "cruise, 80, ASCII, US",
        "cruise, 120, UNICODE, BOTH",
        "explain, 40, ASCII, METRIC",
        "explain, 80, UNICODE, BOTH",
        "plot, 20, UNICODE, US",
        "plot, 40, UNICODE, US",
        "plot, 40, ASCII, METRIC",
        "plot, 80, UNICODE, US",
        "plot, 80, ASCII, US",
        "plot, 120, UNICODE, METRIC",
        "torques, 60, UNICODE, METRIC",
        "torques, 80, ASCII, US"
    })
    void writesTables(String name, int width, Signs signs, UnitSystem units) {
        Page page = Page.screen(units, width, 24).withSigns(signs);

        String file = name + "-" + width + "-" + signs + "-" + units + ".txt";

        GoldenFile.matches(file.toLowerCase(java.util.Locale.ROOT), TableText.of(REPORTS.get(name), page));
    }

    @ParameterizedTest
    @CsvSource({"cruise, BOTH", "explain, US", "plot, METRIC"})
    void writesPlainText(String name, UnitSystem units) {
        GoldenFile.matches(name + "-plain.txt", PlainText.of(REPORTS.get(name), Page.endless(units)));
    }

    @ParameterizedTest
    @CsvSource({"cruise, BOTH", "explain, US", "plot, METRIC"})
    void writesMarkdown(String name, UnitSystem units) {
        GoldenFile.matches(name + ".md", MarkdownText.of(REPORTS.get(name), Page.endless(units)));
    }

    @ParameterizedTest
    @CsvSource({"cruise, BOTH", "explain, US", "plot, METRIC"})
    void writesCsv(String name, UnitSystem units) {
        String csv = CsvText.of(REPORTS.get(name), Page.endless(units));

        assertThat(csv).endsWith("\r\n").doesNotContainPattern("[^\r]\n");
        GoldenFile.matches(name + ".csv", csv.replace("\r\n", "\n"));
    }

    @Test
    void endlessTableHasTheSameWordsAsAWideScreen() {
        String endless = TableText.of(SampleReports.cruise(), Page.endless(UnitSystem.US));

        assertThat(endless).isEqualTo(TableText.of(SampleReports.cruise(), Page.screen(UnitSystem.US, 500, 24)));
    }
}
