package drivetrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalTextTest {

    @ParameterizedTest
    @CsvSource({
        "65,1,65.0",
        "65.04,1,65.0",
        "65.05,1,65.1",
        "-65.05,1,-65.1",
        "0.5,0,1",
        "-0.5,0,-1",
        "-0.04,1,0.0",
        "-0.0,2,0.00",
        "1e21,0,1000000000000000000000",
        "1234567.891,2,1234567.89",
        "2.675,2,2.68",
        "4.9E-324,15,0.000000000000000"
    })
    void printsAFixedCountOfDecimals(double value, int decimals, String text) {
        assertThat(DecimalText.fixed(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "3.14159,3,3.14",
        "1234567,3,1230000",
        "0.00012345,2,0.00012",
        "-9.995,3,-10",
        "0,5,0",
        "4.10,3,4.1",
        "-0.0,3,0"
    })
    void printsSignificantDigits(double value, int digits, String text) {
        assertThat(DecimalText.significant(value, digits)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "4.1,4.1",
        "65,65",
        "0,0",
        "-0.0,0",
        "1e21,1000000000000000000000",
        "0.1,0.1",
        "1e-7,0.0000001",
        "2e23,200000000000000000000000",
        "0.30000000000000004,0.30000000000000004",
        "5.6843418860808015E-14,0.000000000000056843418860808015"
    })
    void printsTheFewestDigitsThatReadBack(double value, String text) {
        assertThat(DecimalText.shortest(value)).isEqualTo(text);
    }

    @Test
    void theFewestDigitsReadBackForAnyNumber() {
        Random random = new Random(20_240_401L);
        for (int i = 0; i < 5_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value)) {
                String text = DecimalText.shortest(value);

                assertThat(DecimalText.parse(text)).hasValue(value + 0.0);
                assertThat(text).doesNotContain("e", "E");
            }
        }
        assertThat(DecimalText.shortest(Double.MIN_VALUE)).endsWith("0005").hasSize(326);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNotFinite(double value) {
        assertThatThrownBy(() -> DecimalText.fixed(value, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DecimalText.significant(value, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DecimalText.shortest(value)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesImpossibleCounts() {
        assertThatThrownBy(() -> DecimalText.fixed(1, -1)).hasMessageContaining("0 to 15");
        assertThatThrownBy(() -> DecimalText.fixed(1, 16)).hasMessageContaining("0 to 15");
        assertThatThrownBy(() -> DecimalText.significant(1, 0)).hasMessageContaining("1 to 15");
        assertThatThrownBy(() -> DecimalText.significant(1, 16)).hasMessageContaining("1 to 15");
    }

    @ParameterizedTest
    @CsvSource({"4.10,4.1", "-3,-3", "+.5,0.5", "1e3,1000", "7.,7"})
    void readsADecimalNumber(String text, double value) {
        assertThat(DecimalText.parse(text)).hasValue(value);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " 1", "1 ", "1,5", "NaN", "Infinity", "1e999", "0x1p3", "1d", "1f", "\u0661", "7/16", "1.2.3"
            })
    void readsNothingElse(String text) {
        assertThat(DecimalText.parse(text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"12.999999999999998,13", "0,0", "1e300,1.0E300", "-1e-9,-1.0E-9", "Infinity,Infinity"})
    void isBriefInARefusal(double value, String text) {
        assertThat(DecimalText.brief(value)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "de-DE", "hi-IN-u-nu-deva"})
    void printsTheSameUnderEveryLocale(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));

            assertThat(DecimalText.fixed(-1234.5, 2)).isEqualTo("-1234.50");
            assertThat(Length.ofInches(31.5).format(Length.INCH, 1)).isEqualTo("31.5 in");
            assertThat(Length.parse("31.5 IN")).isEqualTo(Length.ofInches(31.5));
        } finally {
            Locale.setDefault(before);
        }
    }
}
