package drivetrain.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VisibleTextTest {

    @Test
    void keepsWhatCanBeSeen() {
        String text = "285/75R16, 7.50\u201316, 25 \u00B0C, 410 lb\u00B7ft, \u8ECA, \uD83D\uDE9C";

        assertThat(VisibleText.of(text)).isSameAs(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0000", "0007", "0009", "000A", "000D", "001B", "007F", "009B", "00AD", "061C", "200B", "200F", "2028", "2029",
        "202E", "2066", "FEFF", "0378", "D800", "DC00"
    })
    void escapesWhatActsInsteadOfBeingSeen(String code) {
        String text = "a" + (char) Integer.parseInt(code, 16) + "b";

        assertThat(VisibleText.of(text)).isEqualTo("a\\u" + code + "b");
    }

    @Test
    void writesEverySpaceAsAPlainOne() {
        assertThat(VisibleText.of("a\u00A0b\u2009c\u3000d")).isEqualTo("a b c d");
    }

    @Test
    void escapesInvisibleSignsBeyondTheBasicPlaneAsTwoUnits() {
        assertThat(VisibleText.of("a\uDB40\uDC41")).isEqualTo("a\\uDB40\\uDC41");
    }
}
