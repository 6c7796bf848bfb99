package drivetrain.gearing;

import static drivetrain.gearing.Refusals.assertRefusedAt;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drivetrain.refusal.RefusedException;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TransmissionTest {

    @Test
    void takesRatiosAloneForAClutchedBoxAndSaysSo() {
        Transmission transmission = Transmission.parse("4.03 2.36 1.53 1.15 0.85 0.67");
        assertThat(transmission.forward()).hasSize(6).first().isEqualTo(Ratio.of(4.03));
        assertThat(transmission.reverse()).isEmpty();
        assertThat(transmission.coupling()).isEqualTo(new Clutch(false, Optional.empty()));
        assertThat(transmission.coupling().speedAssumptions())
                .singleElement()
                .satisfies(taken -> assertThat(taken.flagged()).isTrue());
        assertThat(transmission.efficiency()).isEmpty();
        assertThat(transmission.text()).isEqualTo("4.03 2.36 1.53 1.15 0.85 0.67");
        assertThat(transmission.name()).isEqualTo(transmission.text());
    }

    @Test
    void readsEveryWord() {
        Transmission transmission = Transmission.parse(
                "4.03, 2.36, 1.00, Reverse 3.06, Converter, stall 2.0, lock-up, slip 3%, efficiency 94 %");
        assertThat(transmission.reverse()).contains(Ratio.of(3.06));
        assertThat(transmission.coupling())
                .isEqualTo(new Converter(OptionalDouble.of(2.0), true, OptionalDouble.of(0.97)));
        assertThat(transmission.efficiency()).contains(Efficiency.of(0.94));
        assertThat(transmission.text())
                .isEqualTo("4.03 2.36 1.00 reverse 3.06 converter stall 2 lockup slip 3 % efficiency 94 %");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "3.5 2 1; 3.50 2.00 1.00",
                "3.5 2 1 clutch; 3.50 2.00 1.00 clutch",
                "3.5 2 1 efficiency 0.95 clutch; 3.50 2.00 1.00 clutch efficiency 95 %",
                "3.5 1 converter; 3.50 1.00 converter no lockup",
                "3.5 1 converter no lock-up slip 0.04; 3.50 1.00 converter no lockup slip 4 %",
                "3.5 1 converter speed-ratio 0.96123456789012; 3.50 1.00 converter no lockup speed-ratio 0.96123456789012",
                "3.5 1 efficiency 0.951234567890123; 3.50 1.00 efficiency 0.951234567890123",
                "35/10 1 reverse 33/10; 35/10 1.00 reverse 33/10"
            })
    void writesOneCanonicalTextThatParsesBack(String typed, String canonical) {
        Transmission transmission = Transmission.parse(typed);
        assertThat(transmission.text()).isEqualTo(canonical);
        assertThat(Transmission.parse(canonical)).isEqualTo(transmission);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "4.03 2.36 2.50; 10; 3rd gear, 2.50, is not below that of 2nd, 2.36",
                "4.03 4.03; 5; is not below",
                "4,03 2.36; 1; decimals after a point",
                "4.03,2.36; 4; decimals after a point",
                "4.03, 2.36,; 10; separates nothing",
                ", 4.03; 0; separates nothing",
                "4.03 ,2.36; 5; separates nothing",
                "4.03,, 2.36; 4; separates nothing",
                "4.03,x 2.36; 4; separates nothing",
                "clutch; 0; is not a ratio",
                "4.03 21; 5; out of range",
                "4.03 reverse; 12; ends where a ratio is wanted",
                "4.03 reverse -3.06; 13; is not a ratio",
                "4.03 reverse 3 reverse 3; 15; names reverse twice",
                "4.03 clutch converter; 12; names the coupling twice",
                "4.03 clutch clutch; 12; names the coupling twice",
                "4.03 stall 2; 5; wants \"converter\" ahead",
                "4.03 clutch lockup; 12; wants \"converter\" ahead",
                "4.03 converter stall; 20; ends where",
                "4.03 converter stall x; 21; is not a stall torque ratio",
                "4.03 converter stall 200%; 21; is not a stall torque ratio",
                "4.03 converter stall 0.9; 21; outside 1 to 5",
                "4.03 converter stall 6; 21; outside 1 to 5",
                "4.03 converter stall 2 stall 2; 23; twice",
                "4.03 converter lockup no lockup; 22; twice",
                "4.03 converter no lockup lockup; 25; twice",
                "4.03 converter no slip; 18; wants \"lockup\"",
                "4.03 converter slip 3; 20; percent sign",
                "4.03 converter slip x; 20; is not a slip",
                "4.03 converter slip 51 %; 20; outside 0 % to 50 %",
                "4.03 converter speed-ratio 1.1; 27; outside 0 % to 50 %",
                "4.03 converter slip 3 % speed-ratio 0.97; 24; twice",
                "4.03 converter slip 3 % slip 3 %; 24; twice",
                "4.03 converter nonsense; 15; not understood",
                "4.03 efficiency 0; 16; not more than 0",
                "4.03 efficiency 101 %; 16; at most 100 %",
                "4.03 efficiency 1.01; 16; percent sign",
                "4.03 efficiency 0.9 efficiency 0.9; 20; twice"
            })
    void locatesWhatItRefuses(String typed, int position, String problem) {
        assertRefusedAt(position, problem, () -> Transmission.parse(typed));
    }

    @Test
    void suggestsTheWordThatWasMeant() {
        assertThat(Refusals.of(() -> Transmission.parse("4.03 1.00 convertor")).suggestions())
                .containsExactly("converter");
    }

    @Test
    void refusesNoGearAndTooMany() {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(
                        () -> new Transmission("empty", List.of(), Optional.empty(), new Clutch(), Optional.empty()))
                .withMessageContaining("0 forward gears");
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new Transmission(
                        "many",
                        Collections.nCopies(19, Ratio.of(1.0)),
                        Optional.empty(),
                        new Clutch(),
                        Optional.empty()))
                .withMessageContaining("1 to 18");
        StringBuilder nineteen = new StringBuilder();
        for (int i = 0; i < 19; i++) {
            nineteen.append(19 - 0.5 * i).append(' ');
        }
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> Transmission.parse(nineteen.toString()))
                .withMessageContaining("more than 18");
    }

    @Test
    void refusesRatiosOutOfOrderWithTheirPlace() {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new Transmission(
                        "box",
                        List.of(Ratio.of(3.0), Ratio.of(1.0), Ratio.of(1.5)),
                        Optional.empty(),
                        new Clutch(),
                        Optional.empty()))
                .withMessageContaining("3rd gear, 1.50, is not below that of 2nd, 1.00");
    }

    @Test
    void coversFirstOverTop() {
        assertThat(Trains.AUTOMATIC.spread()).isEqualTo(4.03 / 0.67);
        assertThat(Transmission.parse("1.00").spread()).isEqualTo(1.0);
    }
}
