package drivetrain.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.finding.Caution;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Cautions;
import drivetrain.report.Report;
import drivetrain.report.Sentence;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every report in every format, tried with reports drawn at random from a fixed seed. */
class EveryFormatTest {

    private static final int REPORTS = 100;

    /** Everything that a screen obeys: controls, format characters, line and paragraph separators, lone surrogates. */
    private static final Pattern OBEYED = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}\\p{Cs}&&[^\\n]]");

    private static final List<BiFunction<Report, Page, String>> FORMATS = List.of(
            TableText::of,
            PlainText::of,
            MarkdownText::of,
            (report, page) -> CsvText.of(report, page).replace("\r\n", "\n"),
            (report, page) -> ReportTree.of(report, page.units()).toString());

    @ParameterizedTest
    @ValueSource(ints = {20, 40, 60, 80, 120})
    void noLineOfATableIsWiderThanTheScreen(int width) {
        RandomReports reports = new RandomReports(width);
        for (int count = 0; count < REPORTS; count++) {
            Report report = reports.next();
            for (UnitSystem units : UnitSystem.values()) {
                for (Signs signs : Signs.values()) {
                    Page page = Page.screen(units, width, 24).withSigns(signs);
                    String widest = TableText.of(report, page)
                            .lines()
                            .max(Comparator.comparingInt(DisplayWidth::of))
                            .orElse("");
                    assertThat(DisplayWidth.of(widest)).as(widest).isLessThanOrEqualTo(width);
                }
            }
        }
    }

    @Test
    void nothingThatAScreenObeysIsLeft() {
        RandomReports reports = new RandomReports(1);
        for (int count = 0; count < REPORTS; count++) {
            Report report = reports.next();
            for (BiFunction<Report, Page, String> format : FORMATS) {
                String text = format.apply(report, Page.endless(UnitSystem.BOTH));
                assertThat(OBEYED.matcher(text).find()).as(text).isFalse();
            }
        }
    }

    @Test
    void textInAsciiIsPrintableAscii() {
        RandomReports reports = new RandomReports(2);
        for (int count = 0; count < REPORTS; count++) {
            Report report = reports.next();
            Page page = Page.screen(UnitSystem.BOTH, 60, 24).withSigns(Signs.ASCII);
            for (BiFunction<Report, Page, String> format : FORMATS.subList(0, 4)) {
                assertThat(format.apply(report, page)).matches("[ -~\n]*");
            }
        }
    }

    @Test
    void breakingLinesLosesNoSign() {
        RandomReports words = new RandomReports(3);
        for (int count = 0; count < REPORTS; count++) {
            Report report = Report.of(
                    "random",
                    Sentence.answer(words.words(30)),
                    Cautions.of(List.of(new Caution(words.words(2), words.words(30)))));
            String endless = TableText.of(report, Page.endless(UnitSystem.US));
            String narrow = TableText.of(report, Page.screen(UnitSystem.US, 20, 24));
            assertThat(narrow.replaceAll("\\s", "")).isEqualTo(endless.replaceAll("\\s", ""));
        }
    }

    @Test
    void marksChangeNothingElse() {
        RandomReports reports = new RandomReports(4);
        Styler marks = (style, text) -> "\u0001" + style.ordinal() + text + "\u0002";
        for (int count = 0; count < REPORTS; count++) {
            Report report = reports.next();
            Page page = Page.screen(UnitSystem.US, 60, 24);
            String marked = TableText.of(report, page.withStyler(marks));
            assertThat(marked.replaceAll("\u0001[0-9]|\u0002", "")).isEqualTo(TableText.of(report, page));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "de-CH", "th-TH-u-nu-thai"})
    void bytesDoNotDependOnTheLocale(String tag) {
        Locale before = Locale.getDefault();
        List<String> expected = everyFormat();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(everyFormat()).isEqualTo(expected);
        } finally {
            Locale.setDefault(before);
        }
    }

    private static List<String> everyFormat() {
        return List.of(SampleReports.cruise(), SampleReports.explanation(), SampleReports.plot()).stream()
                .flatMap(report -> FORMATS.stream()
                        .map(format -> format.apply(
                                report, Page.screen(UnitSystem.BOTH, 80, 24).withSigns(Signs.ASCII))))
                .toList();
    }
}
