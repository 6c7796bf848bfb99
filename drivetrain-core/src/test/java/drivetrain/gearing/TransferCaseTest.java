package drivetrain.gearing;

import static drivetrain.gearing.Refusals.assertRefusedAt;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drivetrain.refusal.RefusedException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TransferCaseTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "1 2.72; 1.00 2.72 part-time; PART_TIME",
                "1.00, 2.72, open; 1.00 2.72 open; OPEN",
                "1.22 3.32 Locked efficiency 97%; 1.22 3.32 locked efficiency 97 %; LOCKED",
                "1.00; 1.00 part-time; PART_TIME",
                "1.00 2.72 rear-only; 1.00 2.72 rear-only; REAR_ONLY",
                "none; none; REAR_ONLY"
            })
    void readsAndWritesOneCanonicalText(String typed, String canonical, AxleTie tie) {
        TransferCase transfer = TransferCase.parse(typed);
        assertThat(transfer.text()).isEqualTo(canonical);
        assertThat(transfer.tie()).isEqualTo(tie);
        assertThat(TransferCase.parse(canonical)).isEqualTo(transfer);
    }

    @Test
    void goesStraightThroughWithoutOne() {
        TransferCase none = TransferCase.none();
        assertThat(none.isFitted()).isFalse();
        assertThat(none.high().value()).isEqualTo(1.0);
        assertThat(none.low()).isEmpty();
        assertThat(TransferCase.parse("1.00 2.72").isFitted()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "2.72 1.00; 5; is not above that of high range",
                "1.00 1.00; 5; is not above",
                "1.00 11; 5; out of range",
                "0.4; 0; out of range",
                "1.00 2.72 part time; 10; not understood",
                "1.00 2.72 open locked; 15; not understood",
                "none 1.00; 5; not understood",
                "1.00 2.72 efficiency; 20; ends where"
            })
    void locatesWhatItRefuses(String typed, int position, String problem) {
        assertRefusedAt(position, problem, () -> TransferCase.parse(typed));
    }

    @Test
    void suggestsTheTieThatWasMeant() {
        assertThat(Refusals.of(() -> TransferCase.parse("1.00 2.72 parttime")).suggestions())
                .containsExactly("part-time");
    }

    @Test
    void refusesALowRangeThatDoesNotReduce() {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new TransferCase(
                        "odd", Ratio.of(1.0), Optional.of(Ratio.of(0.8)), AxleTie.OPEN, Optional.empty()))
                .withMessageContaining("high range first");
    }
}
