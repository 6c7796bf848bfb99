package drivetrain.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Cell;
import drivetrain.report.Column;
import drivetrain.report.Grid;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GridTextTest {

    private static final Grid TIRES = new Grid(
            "tires",
            "",
            List.of(
                    Column.ofText("tire", "tire"),
                    Column.ofText("use", "what it is for"),
                    Column.ofFigures("turns", "turns a mile")),
            List.of(
                    List.of(
                            Cell.of("285/75R16 rollout 2510 mm"),
                            Cell.of("mud, and roads between"),
                            Cell.of(Figure.plain(641.2, 1))),
                    List.of(Cell.of("255/85R16"), Cell.of("snow"), Cell.of(Figure.plain(633.0, 1)))));

    private static String set(Grid grid, int columns) {
        Page page = new Page(UnitSystem.US, Signs.ASCII, OptionalInt.of(columns), 24, Styler.NONE);
        StringBuilder set = new StringBuilder();
        GridText.of(grid, page, 0).forEach(line -> line.write(set, Styler.NONE));
        return set.toString();
    }

    @Test
    void setsOneLineARowWhereThereIsRoom() {
        assertThat(set(TIRES, 80)).isEqualTo("""
                        tire                       what it is for          turns a mile
                        ---------------------------------------------------------------
                        285/75R16 rollout 2510 mm  mud, and roads between         641.2
                        255/85R16                  snow                           633.0
                        """);
    }

    @Test
    void breaksLongTextsButNoNumberFromItsUnit() {
        assertThat(set(TIRES, 44)).isEqualTo("""
                                                               turns
                                                                   a
                        tire               what it is for       mile
                        --------------------------------------------
                        285/75R16 rollout  mud, and roads      641.2
                          2510 mm            between
                        255/85R16          snow                633.0
                        """);
    }

    @Test
    void setsOneValueALineWhereNotEvenWordsFit() {
        assertThat(set(TIRES, 30)).isEqualTo("""
                        285/75R16 rollout 2510 mm
                          what it is for: mud, and
                            roads between
                          turns a mile: 641.2
                        255/85R16
                          what it is for: snow
                          turns a mile: 633.0
                        """);
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 25, 30, 35, 40, 41, 42, 43, 44, 45, 50, 55, 60, 63, 70})
    void losesNothingAndStaysOnThePage(int columns) {
        String set = set(TIRES, columns);

        assertThat(set.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(columns));
        assertThat(set.replaceAll("\\s+", " ")).contains("2510 mm", "255/85R16", "snow", "641.2", "633.0");
        assertThat(set).doesNotContain("2510\n");
    }
}
