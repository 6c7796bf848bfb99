package drivetrain.gearing;

import static drivetrain.gearing.Refusals.assertRefusedAt;
import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.RefusedException;
import java.util.OptionalInt;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RatioTest {

    @Test
    void computesWithTheToothPairAndShowsTwoDecimals() {
        Ratio ratio = Ratio.parse("41/11");
        assertThat(ratio.value()).isEqualTo(41.0 / 11.0);
        assertThat(ratio.figure().text(UnitSystem.US)).isEqualTo("3.73");
        assertThat(ratio.figure().number(UnitSystem.US)).isEqualTo(41.0 / 11.0);
        assertThat(ratio.text()).isEqualTo("41/11");
        assertThat(ratio.isPair()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "4.10, 4.10, 4.10",
        "4.1, 4.10, 4.10",
        "4.10:1, 4.10, 4.10",
        "4:1, 4.00, 4.00",
        ".67, 0.67, 0.67",
        "4., 4.00, 4.00",
        "0.695, 0.695, 0.695",
        "3.7273, 3.7273, 3.727",
        "' 41:11 ', 41/11, 3.73",
        "24/16, 24/16, 1.50"
    })
    void readsWritesAndShows(String typed, String text, String shown) {
        Ratio ratio = Ratio.parse(typed);
        assertThat(ratio.text()).isEqualTo(text);
        assertThat(ratio.figure().text(UnitSystem.METRIC)).isEqualTo(shown);
        assertThat(Ratio.parse(ratio.text())).isEqualTo(ratio);
    }

    @Test
    void keepsDecimalAndPairApart() {
        assertThat(Ratio.of(4.1)).isNotEqualTo(Ratio.ofTeeth(41, 10));
        assertThat(Ratio.of(4.1).value()).isEqualTo(Ratio.ofTeeth(41, 10).value());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "41/4; 3; tooth count",
                "81/40; 0; tooth count",
                "99999/11; 0; tooth count",
                "0.29; 0; out of range",
                "20.1; 0; out of range",
                "5/80; 0; out of range",
                "41/1; 0; out of range",
                "3,73; 1; decimals after a point",
                "3..7; 2; is not a ratio",
                "-3; 0; is not a ratio",
                "3e2; 1; is not a ratio",
                "41/11x; 5; is not a ratio",
                "x; 0; is not a ratio",
                "41/; 0; is not a ratio",
                "3.73 4.10; 5; not understood here"
            })
    void locatesWhatItRefuses(String typed, int position, String problem) {
        assertRefusedAt(position, problem, () -> Ratio.parse(typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   "})
    void refusesEmptyText(String typed) {
        assertRefusedAt(typed.length(), "is empty", () -> Ratio.parse(typed));
    }

    @Test
    void refusesOverlongText() {
        Assertions.assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> Ratio.parse("4".repeat(5000)))
                .withMessageContaining("is too long")
                .satisfies(refused -> assertThat(refused.getMessage()).hasSizeLessThan(400));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, -4.1, 0.2999, 20.0001, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossibleNumbers(double value) {
        Assertions.assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> Ratio.of(value))
                .withMessageContaining("0.3 to 20");
    }

    @Test
    void refusesHalfAPairAndAWrongQuotient() {
        Assertions.assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new Ratio(4.1, OptionalInt.of(41), OptionalInt.empty()));
        Assertions.assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new Ratio(4.11, OptionalInt.of(41), OptionalInt.of(10)));
        Assertions.assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> Ratio.ofTeeth(41, 4))
                .withMessageContaining("5 to 80 teeth");
        Assertions.assertThatExceptionOfType(RefusedException.class).isThrownBy(() -> Ratio.ofTeeth(81, 20));
    }
}
