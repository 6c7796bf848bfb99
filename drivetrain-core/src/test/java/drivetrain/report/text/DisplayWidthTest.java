package drivetrain.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class DisplayWidthTest {

    @Test
    void countsLettersMarksAndWideSigns() {
        assertThat(DisplayWidth.of("axle")).isEqualTo(4);
        assertThat(DisplayWidth.of("cafe\u0301")).isEqualTo(4);
        assertThat(DisplayWidth.of("\u4E2D\u6587")).isEqualTo(4);
        assertThat(DisplayWidth.of("\uD83D\uDE99")).isEqualTo(2);
        assertThat(DisplayWidth.of("\u2500\u28FF\u00B7")).isEqualTo(3);
    }

    /** Unicode Character Database, property East_Asian_Width: every sign that it calls wide counts two. */
    @Test
    void countsTwoForEverySignThatUnicodeCallsWide() throws IOException {
        List<String> lines;
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                DisplayWidthTest.class.getResourceAsStream("east-asian-wide.csv"), StandardCharsets.UTF_8))) {
            lines = reader.lines().filter(line -> !line.startsWith("#")).skip(1).toList();
        }
        assertThat(lines).hasSizeGreaterThan(100);
        for (String line : lines) {
            String[] ends = line.split(",");
            for (int sign = Integer.parseInt(ends[0], 16); sign <= Integer.parseInt(ends[1], 16); sign++) {
                boolean combines = Character.getType(sign) == Character.NON_SPACING_MARK;
                assertThat(DisplayWidth.of(sign)).as(line).isEqualTo(combines ? 0 : 2);
            }
        }
    }

    @Test
    void cutsBetweenSigns() {
        assertThat(DisplayWidth.fitting("abcdef", 4)).isEqualTo(4);
        assertThat(DisplayWidth.fitting("abc", 4)).isEqualTo(3);
        assertThat(DisplayWidth.fitting("a\u0301b\u0301c", 2)).isEqualTo(4);
        assertThat(DisplayWidth.fitting("\u4E2D\u6587", 3)).isEqualTo(1);
        assertThat(DisplayWidth.fitting("\u4E2D", 1)).isEqualTo(1);
    }

    @Test
    void padsToColumns() {
        assertThat(DisplayWidth.padEnd("\u4E2D", 4)).isEqualTo("\u4E2D  ");
        assertThat(DisplayWidth.padStart("ab", 4)).isEqualTo("  ab");
        assertThat(DisplayWidth.padStart("abcde", 4)).isEqualTo("abcde");
    }
}
