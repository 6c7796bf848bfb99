package drivetrain.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.report.text.Line.Span;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class FlowTest {

    private static String text(int width, String lead, int hang, String... words) {
        List<Span> spans = List.of(words).stream().map(Span::of).toList();
        StringBuilder text = new StringBuilder();
        Flow.of(OptionalInt.of(width), List.of(Span.of(lead)), hang, spans)
                .forEach(line -> line.write(text, Styler.NONE));
        return text.toString();
    }

    @Test
    void breaksAtSpacesAndIndentsTheNextLines() {
        assertThat(text(12, "- ", 2, "one two three four")).isEqualTo("- one two\n  three four\n");
    }

    @Test
    void keepsANumberWithItsUnit() {
        assertThat(text(12, "", 0, "turns at 1829 rpm")).isEqualTo("turns at\n1829 rpm\n");
        assertThat(text(12, "", 0, "it is at (104.6 km/h)")).isEqualTo("it is at\n(104.6 km/h)\n");
    }

    @Test
    void keepsAUnitOfTwoWordsTogether() {
        assertThat(text(14, "", 0, "burns 11.9 US gal/h now")).isEqualTo("burns\n11.9 US gal/h\nnow\n");
        assertThat(text(12, "", 0, "it holds 20 imp gal")).isEqualTo("it holds\n20 imp gal\n");
        assertThat(text(20, "", 0, "sold in 1974 US")).isEqualTo("sold in 1974 US\n");
    }

    @Test
    void separatesANumberFromAUnitThatFitsNoLine() {
        assertThat(text(8, "", 0, "at 12345 kilowatts")).isEqualTo("at 12345\nkilowatt\ns\n");
    }

    @Test
    void endsWithANumber() {
        assertThat(text(20, "", 0, "gear", "4")).isEqualTo("gear 4\n");
    }

    @Test
    void continuesAWordWiderThanALine() {
        assertThat(text(6, "", 2, "abcdefghijkl mn")).isEqualTo("abcdef\n  ghij\n  kl\n  mn\n");
    }

    @Test
    void startsALineForAWordThatDoesNotFitBehindTheLead() {
        assertThat(text(8, "lead: ", 2, "abcdef")).isEqualTo("lead:\n  abcdef\n");
    }

    @Test
    void setsOneLineWithoutAWidth() {
        List<Line> lines = Flow.of(OptionalInt.empty(), List.of(), 0, List.of(Span.of("word ".repeat(200))));

        assertThat(lines)
                .singleElement()
                .satisfies(line -> assertThat(line.width()).isEqualTo(999));
    }

    @Test
    void stylesWordsAndNotTheSpacesAroundThem() {
        StringBuilder text = new StringBuilder();
        Styler marks = (style, words) -> "<" + words + ">";
        Flow.of(
                        OptionalInt.of(9),
                        List.of(new Span(Style.HEADING, "  a ")),
                        2,
                        List.of(new Span(Style.ANSWER, "b c d e"), Span.of("f")))
                .forEach(line -> line.write(text, marks));

        assertThat(text).hasToString("  <a> <b c d>\n  <e> f\n");
    }
}
