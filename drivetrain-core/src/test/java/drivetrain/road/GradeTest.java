package drivetrain.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Angle;
import drivetrain.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GradeTest {

    @ParameterizedTest
    @CsvSource({
        "6 %, 0.06",
        "6%, 0.06",
        "-4.5 percent, -0.045",
        "45 deg, 1",
        "100 %, 1",
        "1 in 8, 0.125",
        "1:4, 0.25",
        "level, 0",
        "FLAT, 0"
    })
    void readsWhatPeopleSay(String text, double tangent) {
        assertThat(Grade.parse(text).tangent()).isCloseTo(tangent, within(1e-12));
    }

    @Test
    void refusesABareNumberBehindIt() {
        Refusals.assertRefusedAt(1, "has no unit", () -> Grade.parse("6"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"90 deg", "-90 deg", "101 %", "1 in 0", "1 in 0.5", "1e9 %", "46 deg"})
    void refusesWhatIsTooSteep(String text) {
        assertThat(Refusals.of(() -> Grade.parse(text)).allowed()).contains("up to 100 %");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "steep", "six %", "1.2.3 %", "1 in", "NaN %"})
    void refusesWhatIsNoGrade(String text) {
        assertThat(Refusals.of(() -> Grade.parse(text)).problem()).contains("is not a grade");
    }

    @Test
    void refusesTheVertical() {
        assertThat(Refusals.of(() -> Grade.ofAngle(Angle.ofDegrees(90.0))).problem())
                .contains("vertical");
        assertThat(Refusals.of(() -> new Grade(Double.POSITIVE_INFINITY)).problem())
                .contains("vertical");
    }

    @Test
    void sineAndCosineBelongToTheAngle() {
        Grade grade = Grade.ofAngle(Angle.ofDegrees(-20.0));
        assertThat(grade.sine()).isCloseTo(Math.sin(Math.toRadians(-20.0)), within(1e-15));
        assertThat(grade.cosine()).isCloseTo(Math.cos(Math.toRadians(20.0)), within(1e-15));
        assertThat(grade.angle().toDegrees()).isCloseTo(-20.0, within(1e-12));
    }

    @Test
    void showsPercent() {
        assertThat(Grade.ofPercent(6.25).figure().text(UnitSystem.US)).isEqualTo("6.3 %");
        assertThat(Grade.level().tangent()).isZero();
    }
}
