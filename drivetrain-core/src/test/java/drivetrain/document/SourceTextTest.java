package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.refusal.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SourceTextTest {

    private static final SourceText TEXT = SourceText.of("f", "ab\ncd\r\n\re\uD83D\uDE00f");

    @ParameterizedTest
    @CsvSource({"0,1,1", "1,1,2", "2,1,3", "3,2,1", "6,2,4", "7,3,1", "8,4,1", "9,4,2", "11,4,3", "12,4,4"})
    void findsThePlaceOfAnIndexAndTheIndexOfAPlace(int index, int line, int column) {
        assertThat(TEXT.place(index)).isEqualTo(new Place("f", line, column));
        assertThat(TEXT.index(line, column)).isEqualTo(index);
    }

    @Test
    void keepsWithinTheText() {
        assertThat(TEXT.place(99)).isEqualTo(new Place("f", 4, 4));
        assertThat(TEXT.place(-1)).isEqualTo(new Place("f", 1, 1));
        assertThat(TEXT.index(99, 99)).isEqualTo(12);
        assertThat(TEXT.index(0, 0)).isZero();
    }

    @Test
    void countsManyLines() {
        SourceText lines = SourceText.of("f", "x\n".repeat(1000));
        assertThat(lines.place(1998)).isEqualTo(new Place("f", 1000, 1));
    }

    @ParameterizedTest
    @CsvSource({
        "0,U+0000",
        "7,U+0007",
        "1B,U+001B",
        "7F,U+007F",
        "85,U+0085",
        "9B,U+009B",
        "D800,U+D800",
        "DFFF,U+DFFF",
        "FEFF,U+FEFF",
        "FFFE,U+FFFE",
        "FDD0,U+FDD0",
        "2028,U+2028",
        "2029,U+2029",
        "202E,U+202E",
        "2066,U+2066"
    })
    void refusesCharactersThatSteerATerminalOrCannotBeSeen(String hex, String name) {
        String text = "a: 1\nb: x" + (char) Integer.parseInt(hex, 16) + "y";
        assertThat(Refused.sentence(() -> SourceText.of("f", text)))
                .isEqualTo("f:2:5: document: has the character " + name + "; allowed: printable characters");
    }

    @Test
    void refusesANoncharacterBeyondTheFirstPlane() {
        assertThat(Refused.sentence(() -> SourceText.of("f", "\uD83F\uDFFE"))).contains("U+1FFFE");
    }

    @Test
    void readsEveryScriptAndSymbol() {
        String text = "N\u00B7m \u00D7 \u2300 \uD83D\uDE99 \u4E2D\u6587 \u05D0\u05D1\n\r\t";
        assertThat(SourceText.of("f", text).text()).isEqualTo(text);
    }

    @Test
    void refusesATextThatIsTooLong() {
        assertThat(Refused.sentence(() -> SourceText.of("f", " ".repeat(Limits.DOCUMENT_BYTES + 1))))
                .startsWith("f: document: is longer than 8 MB");
    }

    @Test
    void quotesInOneShortLine() {
        assertThat(Characters.excerpt("a\nb\u001b[31mc")).isEqualTo("a b?[31mc");
        assertThat(Characters.excerpt("\uD83D\uDE99 x")).isEqualTo("\uD83D\uDE99 x");
        assertThat(Characters.excerpt("x".repeat(41))).isEqualTo("x".repeat(40) + "...");
        assertThat(Characters.excerpt("x".repeat(39) + "\uD83D\uDE99")).isEqualTo("x".repeat(39) + "...");
    }
}
