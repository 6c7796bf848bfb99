package drivetrain.gearing;

import static drivetrain.gearing.Refusals.assertRefusedAt;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drivetrain.refusal.RefusedException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SingleRatioPartsTest {

    @ParameterizedTest
    @ValueSource(strings = {"0.78", "1.25 efficiency 97 %", "none", "39/50"})
    void readsAndWritesOverdrives(String text) {
        Overdrive overdrive = Overdrive.parse(text);
        assertThat(overdrive.text()).isEqualTo(text);
        assertThat(Overdrive.parse(overdrive.text())).isEqualTo(overdrive);
        assertThat(overdrive.isFitted()).isEqualTo(!text.equals("none"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"24/16", "1.50 efficiency 98 %", "none"})
    void readsAndWritesHubReductions(String text) {
        HubReduction hubs = HubReduction.parse(text);
        assertThat(hubs.text()).isEqualTo(text);
        assertThat(HubReduction.parse(hubs.text())).isEqualTo(hubs);
        assertThat(hubs.isFitted()).isEqualTo(!text.equals("none"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"41/10", "4.10", "4.10 efficiency 96 %"})
    void readsAndWritesAxles(String text) {
        AxleRatio axle = AxleRatio.parse(text);
        assertThat(axle.text()).isEqualTo(text);
        assertThat(AxleRatio.parse(axle.text())).isEqualTo(axle);
    }

    @Test
    void namesPartsByTheirRatio() {
        assertThat(Overdrive.of(Ratio.of(0.78))).isEqualTo(Overdrive.parse("0.78"));
        assertThat(HubReduction.of(Ratio.ofTeeth(24, 16))).isEqualTo(HubReduction.parse("24/16"));
        assertThat(AxleRatio.of(Ratio.ofTeeth(41, 10))).isEqualTo(AxleRatio.parse("41/10"));
        assertThat(Overdrive.parse("NONE")).isSameAs(Overdrive.none());
        assertThat(HubReduction.parse("none")).isSameAs(HubReduction.none());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "1.00; 0; changes nothing",
                "0.4; 0; out of range",
                "none none; 5; not understood",
                "0.78 0.80; 5; not understood",
                "0.78 eficiency 97 %; 5; not understood",
                "0,78; 1; decimals after a point"
            })
    void locatesRefusedOverdrives(String typed, int position, String problem) {
        assertRefusedAt(position, problem, () -> Overdrive.parse(typed));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "1; 0; changes nothing",
                "0.9; 0; out of range",
                "7.1; 0; out of range",
                "none x; 5; not understood"
            })
    void locatesRefusedHubReductions(String typed, int position, String problem) {
        assertRefusedAt(position, problem, () -> HubReduction.parse(typed));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "1.4; 0; out of range",
                "12.1; 0; out of range",
                "60/5 x; 5; not understood",
                "none; 0; not a ratio"
            })
    void locatesRefusedAxles(String typed, int position, String problem) {
        assertRefusedAt(position, problem, () -> AxleRatio.parse(typed));
    }

    @Test
    void refusesPartsThatContradictTheirName() {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new Overdrive("none", Ratio.of(0.78), Optional.empty()));
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new HubReduction("portal", Ratio.of(1.0), Optional.empty()));
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new AxleRatio("crawler", Ratio.of(13.0), Optional.empty()))
                .withMessageContaining("1.5 to 12");
    }

    @Test
    void tellsWhatADecimalAxleRatioLeavesOpen() {
        assertThat(AxleRatio.parse("3.73").decimalAssumption().orElseThrow()).satisfies(assumption -> {
            assertThat(assumption.statement()).isEqualTo("decimal 3.73 used; the pair 41/11 would be 3.7273");
            assertThat(assumption.flagged()).isFalse();
        });
        assertThat(AxleRatio.parse("4.56").decimalAssumption().orElseThrow().statement())
                .contains("41/9 would be 4.5556");
    }

    @ParameterizedTest
    @ValueSource(strings = {"41/11", "4.10", "3.90", "9.99"})
    void assumesNothingForPairsExactDecimalsAndUnknownOnes(String text) {
        assertThat(AxleRatio.parse(text).decimalAssumption()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, -0.1, 1.0001, Double.NaN})
    void refusesImpossibleEfficiency(double value) {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> Efficiency.of(value))
                .withMessageContaining("at most 1");
    }
}
