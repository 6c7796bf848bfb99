package drivetrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumeralTest {

    @ParameterizedTest
    @CsvSource({
        "12 in,12,2",
        "12.5in,12.5,4",
        ".5 in,0.5,2",
        "5. in,5,2",
        "+5 in,5,2",
        "-5 in,-5,2",
        "1e3 in,1000,3",
        "1E-3in,0.001,4",
        "1e+3 in,1000,4",
        "1em,1,1",
        "0x10 in,0,1",
        "1d in,1,1",
        "4.10.2 in,4.1,4",
        "1/min,1,1"
    })
    void readsADecimalNumberAndStopsBehindIt(String text, double value, int end) {
        Numeral numeral = Numeral.at(0, text).orElseThrow();

        assertThat(numeral.value()).isEqualTo(value);
        assertThat(numeral.end()).isEqualTo(end);
        assertThat(numeral.form()).isEqualTo(Numeral.Form.DECIMAL);
    }

    @Test
    void readsWhatARegularExpressionOfTheSameNumbersReads() {
        Pattern decimal = Pattern.compile("[+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");
        Random random = new Random(20);
        for (int i = 0; i < 200_000; i++) {
            StringBuilder typed = new StringBuilder();
            for (int length = random.nextInt(10); length > 0; length--) {
                typed.append("0123456789....++--eeEE x".charAt(random.nextInt(24)));
            }
            String text = typed.toString();
            int start = random.nextInt(text.length() + 1);
            Matcher expected = decimal.matcher(text).region(start, text.length());

            Optional<String> read = Numeral.at(start, text).map(Numeral::text);
            assertThat(read)
                    .as("%s from %d", text, start)
                    .isEqualTo(expected.lookingAt() ? Optional.of(expected.group()) : Optional.empty());
            assertThat(Numeral.isDecimal(text))
                    .as(text)
                    .isEqualTo(decimal.matcher(text).matches());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "88 7/16 in,88.4375,7",
        "88-7/16 in,88.4375,7",
        "7/16in,0.4375,4",
        "-7/16 in,-0.4375,5",
        "-88 7/16 in,-88.4375,8",
        "0/2 in,0,3",
        "1 1/2in,1.5,5",
        "1  63/64 in,1.984375,8",
        "999999999 1/64 in,999999999.015625,14"
    })
    void readsATapeFractionExactly(String text, double value, int end) {
        Numeral numeral = Numeral.at(0, text).orElseThrow();

        assertThat(numeral.value()).isEqualTo(value);
        assertThat(numeral.end()).isEqualTo(end);
        assertThat(numeral.form()).isEqualTo(Numeral.Form.TAPE_FRACTION);
    }

    @ParameterizedTest
    @ValueSource(strings = {"41/11 in", "16/16 in", "1/3 in", "1/128 in", "1/0 in", "1/1 in", "88 17/16 in"})
    void tellsOtherFractionsApart(String text) {
        assertThat(Numeral.at(0, text).orElseThrow().form()).isEqualTo(Numeral.Form.OTHER_FRACTION);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "in",
                ".",
                "-",
                "+ 5 in",
                "--5 in",
                ",5 in",
                "NaN in",
                "Infinity in",
                "\u0665 in",
                "\uFF15 in",
                "e5"
            })
    void findsNoNumberWhereNoneStands(String text) {
        assertThat(Numeral.at(0, text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0,true", "0.000,true", "0e5,true", "-.0,true", "0.001,false", "1e-400,false", "0E9,true"})
    void tellsWhetherZeroWasTyped(String text, boolean zero) {
        assertThat(Numeral.at(0, text).orElseThrow().isZeroAsTyped()).isEqualTo(zero);
    }
}
