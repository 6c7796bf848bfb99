package drivetrain.tire;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.refusal.Refusal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DesignationRefusalTest {

    @Test
    void locatesALetterThatIsNoConstruction() {
        Refusal refusal = RefusedSize.of("285/75Q16");

        assertThat(refusal.given()).isEqualTo("285/75Q16");
        assertThat(refusal.position()).hasValue(6);
        assertThat(refusal.problem()).contains("\"Q\"").contains("construction");
        assertThat(refusal.allowed()).contains("R or ZR").contains("- or D").contains("B");
        assertThat(refusal.suggestions()).containsExactly("285/75R16");
    }

    @ParameterizedTest(name = "{0} is refused at {1}, near {2}")
    @CsvSource({
        "'', 0, ''",
        "'   ', 3, ''",
        "tire, 0, ''",
        "R16, 0, ''",
        "265, 3, ''",
        "265/, 4, ''",
        "265/75, 6, ''",
        "265/75R, 7, ''",
        "265/75 16, 7, 265/75R16",
        "265/75/16, 6, 265/75R16",
        "265 75 R16, 4, 265/75R16",
        "265\\75R16, 3, 265/75R16",
        "750R16, 0, 7.50R16",
        "1000-20, 0, 10.00-20",
        "33x12.50x15, 8, 33x12.50R15",
        "35x1250R17, 3, 35x12.50R17",
        "'35x12,50R17', 5, 35x12.50R17",
        "2O5/75R15, 1, 205/75R15",
        "2l5/75R15, 1, 215/75R15",
        "7.50~16, 4, 7.50R16",
        "7.R16, 2, ''",
        "100/75R16, 0, ''",
        "465/75R16, 0, ''",
        "265/19R16, 4, ''",
        "265/101R16, 4, ''",
        "265.5/75R16, 0, ''",
        "265/75.5R16, 4, ''",
        "265/75R7, 7, ''",
        "265/75R31, 7, ''",
        "265/75R16.2, 7, ''",
        "19x12.50R10, 0, ''",
        "61x12.50R17, 0, ''",
        "35x3R17, 3, ''",
        "35x26R17, 3, ''",
        "35x12.505R17, 3, ''",
        "20x8.00R17, 8, ''",
        "35x12.50ZR17, 8, 35x12.50R17",
        "2R16, 0, ''",
        "19R16, 0, ''",
        "7.50ZR16, 4, 7.50R16",
        "P7.50R16, 0, 7.50R16",
        "P35x12.50R17, 0, 35x12.50R17",
        "265/75R16 116, 13, 265/75R16",
        "265/75R16 116X, 13, 265/75R16",
        "265/75R16 116I, 13, 265/75R16",
        "265/75R16 116O, 13, 265/75R16",
        "265/75R16 116A9, 13, 265/75R16",
        "265/75R16 116A, 13, 265/75R16",
        "265/75R16 171T, 10, 265/75R16",
        "265/75R16 99999999999999T, 10, 265/75R16",
        "265/75R16 116.5T, 10, 265/75R16",
        "265/75R16 116/R, 14, 265/75R16",
        "265/75R16 120/123R, 14, 265/75R16",
        "265/75R16 (100T), 14, 265/75R16",
        "265/75R16 (100Y, 15, 265/75R16",
        "265/75R16 (Y), 11, 265/75R16",
        "265/75R16 116T 112S, 15, 265/75R16 116T",
        "265/75R16 7PR, 10, 265/75R16",
        "265/75R16 26PR, 10, 265/75R16",
        "265/75R16 12.0010PR, 10, 265/75R16",
        "265/75R16 LRE XL, 14, 265/75R16 LRE",
        "265/75R16 LRI, 12, 265/75R16",
        "265/75R16 LR, 12, 265/75R16",
        "LT265/75R16 LT, 12, LT265/75R16",
        "265/75R16C LT, 11, 265/75R16C",
        "265/75R16 H, 10, 265/75R16",
        "265/75R16 N, 10, 265/75R16",
        "265/75R16 C, 10, 265/75R16",
        "P265/75R16C, 10, P265/75R16",
        "265/75R16 A8, 10, 265/75R16",
        "265/75R16 Q, 10, 265/75R16",
        "265/75R16 XLX, 10, 265/75R16",
        "265/75R16 EE, 10, 265/75R16",
        "265/75R16 M+S, 10, 265/75R16",
        "265/75R16 STX, 10, 265/75R16",
        "265/75R16 ), 10, 265/75R16",
    })
    void locatesTheFaultAndNamesTheNearestReading(String typed, int position, String near) {
        Refusal refusal = RefusedSize.of(typed);

        assertThat(refusal.subject()).isEqualTo("tire size");
        assertThat(refusal.given()).isEqualTo(typed);
        assertThat(refusal.position()).hasValue(position);
        assertThat(refusal.suggestions()).isEqualTo(near.isEmpty() ? List.of() : List.of(near));
    }

    @ParameterizedTest
    @CsvSource({
        "100/75R16, 105 to 455 mm",
        "265/19R16, 20 to 100 %",
        "265/75R31, 8 to 30 in",
        "61x12.50R17, 20 to 60 in",
        "35x26R17, 4 to 25 in",
        "19R16, 2.5 to 18 in",
        "265/75R16 171T, load index 0 to 170",
        "265/75R16 116X, A1 to A8",
        "265/75R16 7PR, 2PR to 24PR",
        "265/75R16 H, LRH",
        "265/75R16 C, LRC",
    })
    void namesWhatIsAllowed(String typed, String allowed) {
        assertThat(RefusedSize.of(typed).allowed()).contains(allowed);
    }

    @Test
    void refusesAnEndlessTextWithoutReadingIt() {
        Refusal refusal = RefusedSize.of("265/75R16".repeat(1_000_000));

        assertThat(refusal.problem()).isEqualTo("is too long");
        assertThat(refusal.given()).hasSizeLessThan(100);
        assertThat(refusal.position().orElseThrow())
                .isBetween(0, refusal.given().length());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\0", "265/75R16\0", "265/75R16 116\0", "265/75R16 LR\0", "\uD83D\uDE97", "265/75R16 A\0"})
    void refusesSignsFromElsewhere(String typed) {
        assertThat(RefusedSize.of(typed).position().orElseThrow()).isBetween(0, typed.length());
    }
}
