package drivetrain.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Torque;
import drivetrain.quantity.Unit;
import drivetrain.quantity.UnitSystem;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SignsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "n = v / r \u00B7 i;n = v / r * i",
                "500 lb\u00B7ft;500 lb-ft",
                "680 N\u00B7m;680 Nm",
                "0.50 lb/(hp\u00B7h);0.50 lb/(hp-h)",
                "3.05 \u00D7 d;3.05 x d",
                "35\u00B0;35 deg",
                "in \u00B0;in deg",
                "rad/s\u00B2;rad/s^2",
                "\u03C9 = 2\u03C0n;omega = 2pin",
                "\u0394v \u2264 5 \u2013 6 \u2014 \u201Cso\u201D;Deltav <= 5 - 6 -- \"so\"",
                "caf\u00E9, cafe\u0301;cafe, cafe",
                "\uFB01lter;filter",
                "v\u2080;v0",
                "\u4E2D;\\u4E2D",
                "\uD83D\uDE99;\\uD83D\\uDE99"
            })
    void spellsSignsInAscii(String text, String ascii) {
        assertThat(Signs.ASCII.text(text)).isEqualTo(ascii);
        assertThat(Signs.UNICODE.text(text)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "\\u001B[31m, 001B",
        "\\u0000, 0000",
        "\\u0007, 0007",
        "\\u009B, 009B",
        "\\u202E, 202E",
        "\\u2066, 2066",
        "\\u200B, 200B",
        "\\u2028, 2028",
        "\\uFEFF, FEFF",
        "\\uD800, D800",
        "\\u0378, 0378"
    })
    void showsWhatAScreenWouldObey(String shown, String code) {
        String text = (char) Integer.parseInt(code, 16) + (shown.length() > 6 ? shown.substring(6) : "");

        assertThat(Signs.UNICODE.text(text)).isEqualTo(shown);
        assertThat(Signs.ASCII.text(text)).isEqualTo(shown);
    }

    @Test
    void showsSignsBeyondTheBasicPlaneThatAScreenWouldObey() {
        assertThat(Signs.UNICODE.text(Character.toString(0xE0001))).isEqualTo("\\uDB40\\uDC01");
    }

    @Test
    void makesEverySpaceAPlainOne() {
        assertThat(Signs.UNICODE.text("65.0\u00A0mph\u2003x")).isEqualTo("65.0 mph x");
    }

    @Test
    void writesFiguresInBothSystems() {
        Figure torque = SampleReports.torque(680.0);

        assertThat(Signs.UNICODE.text(torque, UnitSystem.BOTH)).isEqualTo(torque.text(UnitSystem.BOTH));
        assertThat(Signs.ASCII.text(torque, UnitSystem.BOTH)).isEqualTo("502 lb-ft (680 Nm)");
        assertThat(Signs.ASCII.text(SampleReports.rpm(3000), UnitSystem.BOTH)).isEqualTo("3000 rpm");
        assertThat(Signs.ASCII.text(Figure.plain(4.1, 2), UnitSystem.BOTH)).isEqualTo("4.10");
    }

    @Test
    void spellsUnitsInTextAsTheUnitsDo() {
        for (Kind<?> kind : new Kind<?>[] {Torque.KIND, AngularSpeed.KIND}) {
            for (Unit<?> unit : kind.units()) {
                assertThat(Signs.ASCII.text(unit.symbol())).isEqualTo(unit.asciiSymbol());
            }
        }
    }

    @Test
    void choosesByCharset() {
        assertThat(Signs.of(StandardCharsets.UTF_8)).isEqualTo(Signs.UNICODE);
        assertThat(Signs.of(StandardCharsets.US_ASCII)).isEqualTo(Signs.ASCII);
        assertThat(Signs.of(StandardCharsets.ISO_8859_1)).isEqualTo(Signs.ASCII);
    }
}
