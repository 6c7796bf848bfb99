package drivetrain.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.LinePlot;
import drivetrain.report.LinePlot.Curve;
import drivetrain.report.LinePlot.Point;
import drivetrain.report.text.PlotAxis.Tick;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlotTextTest {

    private static PlotAxis spanning(double... numbers) {
        DoubleSummaryStatistics all = DoubleStream.of(numbers).summaryStatistics();
        return PlotAxis.spanning(all);
    }

    private static Point point(double x, double y) {
        return new Point(Figure.plain(x, 1), Figure.plain(y, 1));
    }

    private static List<String> drawn(LinePlot plot, Page page) {
        StringBuilder text = new StringBuilder();
        PlotText.of(plot, page, 0).forEach(line -> line.write(text, Styler.NONE));
        return text.toString().lines().toList();
    }

    @Test
    void startsAxesAtZeroWhereThatIsCheap() {
        assertThat(spanning(650, 6600)).isEqualTo(new PlotAxis(0, 6600));
        assertThat(spanning(5000, 6600)).isEqualTo(new PlotAxis(5000, 6600));
        assertThat(spanning(-3, 5)).isEqualTo(new PlotAxis(-3, 5));
        assertThat(spanning(7)).isEqualTo(new PlotAxis(6, 8));
        assertThat(spanning(0)).isEqualTo(new PlotAxis(-1, 1));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 6600, 7, '0,1000,2000,3000,4000,5000,6000'",
        "0, 222, 6, '0,50,100,150,200'",
        "-0.3, 0.45, 5, '-0.2,0.0,0.2,0.4'",
        "0, 1, 4, '0.0,0.5,1.0'",
        "0.001, 0.0034, 6, '0.0010,0.0015,0.0020,0.0025,0.0030'",
        "990, 1010, 5, '990,995,1000,1005,1010'"
    })
    void writesRoundNumbersBesideAxes(double low, double high, int most, String labels) {
        assertThat(new PlotAxis(low, high).ticks(most)).extracting(Tick::label).containsExactly(labels.split(","));
    }

    @Test
    void drawsADiagonalThroughItsCorners() {
        LinePlot plot = new LinePlot("", "x", "y", List.of(new Curve('m', "", List.of(point(0, 0), point(10, 10)))));

        List<String> lines = drawn(plot, Page.screen(UnitSystem.US, 40, 24));

        int origin = lines.get(21).indexOf('\u2514') + 1;
        int lowestDotOnTheLeft = 0x40;
        assertThat(lines).hasSize(24);
        assertThat(lines.get(1)).endsWith("m m");
        assertThat(lines.get(20)).startsWith(" 0 \u2524");
        assertThat((lines.get(20).charAt(origin) - 0x2800) & lowestDotOnTheLeft).isNotZero();
    }

    @Test
    void fitsTheHeightOfThePage() {
        for (int height = 16; height <= 50; height++) {
            assertThat(drawn(SampleReports.fan(), Page.screen(UnitSystem.US, 80, height)))
                    .hasSize(height);
        }
    }

    @Test
    void showsEveryMarkAndEveryName() {
        for (int width : new int[] {40, 60, 80, 120}) {
            for (Signs signs : Signs.values()) {
                List<String> lines = drawn(
                        SampleReports.fan(),
                        Page.screen(UnitSystem.US, width, 24).withSigns(signs));
                int axis = IntStream.range(0, lines.size())
                        .filter(row -> lines.get(row).contains(signs.corner() + signs.tickBelow())
                                || lines.get(row).contains(signs.corner() + signs.horizontal()))
                        .findFirst()
                        .orElseThrow();
                int left = lines.get(axis).indexOf(signs.corner()) + 1;
                int right = lines.get(axis).length();
                String field = String.join(
                        "",
                        lines.subList(1, axis).stream()
                                .map(line ->
                                        line.substring(Math.min(left, line.length()), Math.min(right, line.length())))
                                .toList());
                for (Curve curve : SampleReports.fan().curves()) {
                    assertThat(field).contains(String.valueOf(curve.mark()));
                    assertThat(String.join("\n", lines)).contains(curve.mark() + " " + curve.name());
                }
            }
        }
    }

    @Test
    void drawsOnePointAndAFlatCurve() {
        LinePlot plot = new LinePlot(
                "",
                "x",
                "y",
                List.of(
                        new Curve('p', "p", List.of(point(5, 5))),
                        new Curve('q', "flat", List.of(point(0, 5), point(10, 5)))));

        List<String> lines = drawn(plot, Page.screen(UnitSystem.METRIC, 40, 12).withSigns(Signs.ASCII));

        assertThat(String.join("\n", lines)).contains("--p--").contains("p   q flat");
    }

    @Test
    void placesLabelsOnLinesOfTheirOwnNearTheOnesTheyWant() {
        assertThat(EndLabels.place(List.of(0, 4, 9), 10)).containsExactly(0, 4, 9);
        assertThat(EndLabels.place(List.of(5, 5, 5), 10)).containsExactly(4, 5, 6);
        assertThat(EndLabels.place(List.of(9, 9, 9), 10)).containsExactly(7, 8, 9);
        assertThat(EndLabels.place(List.of(0, 0, 0), 10)).containsExactly(0, 1, 2);
        assertThat(EndLabels.place(List.of(8, 2, 3, 2), 10)).containsExactly(8, 1, 3, 2);
        assertThat(EndLabels.place(List.of(1, 1, 1), 3)).containsExactly(0, 1, 2);
    }

    @Test
    void showsDotsAsSigns() {
        assertThat(Dots.BRAILLE.sign(new boolean[] {true, true, true, true, true, true, true, true}))
                .isEqualTo('\u28FF');
        assertThat(Dots.BRAILLE.sign(new boolean[] {true, false, false, false, false, false, false, false}))
                .isEqualTo('\u2801');
        assertThat(Dots.BRAILLE.sign(new boolean[] {false, false, false, false, false, false, false, true}))
                .isEqualTo('\u2880');
        assertThat(Dots.ASCII.sign(new boolean[] {false, true, false})).isEqualTo('-');
    }
}
