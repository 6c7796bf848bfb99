package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Finding;
import drivetrain.finding.SourceClass;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularSpeed;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShaftSpeedChecksTest {

    private static final AngularSpeed CRITICAL = AngularSpeed.ofRpm(8000);

    private static ShaftSpeed held(double rpm) {
        return ShaftSpeed.held("cruise", AngularSpeed.ofRpm(rpm));
    }

    @ParameterizedTest
    @CsvSource({
        "0, MET, may be used",
        "5599, MET, may be used",
        "5601, MARGINAL, is good",
        "5999, MARGINAL, is good",
        "6001, EXCEEDED, no maker allows",
        "8000, EXCEEDED, whirls",
        "12000, EXCEEDED, whirls"
    })
    void holdsASpeedAgainstTheCriticalSpeed(double rpm, Verdict verdict, String words) {
        Finding finding = ShaftSpeedChecks.critical(
                "rear",
                CRITICAL,
                ShaftSpeed.reached("maximum engine speed in 4th", AngularSpeed.ofRpm(rpm)),
                ShaftHouse.packed());

        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.statement()).contains(words);
        assertThat(finding.checked()).isEqualTo("rear shaft speed, maximum engine speed in 4th");
        assertThat(finding.rule().kind()).isEqualTo(SourceClass.HANDBOOK);
    }

    @ParameterizedTest
    @CsvSource({
        "4000, 5, MARGINAL",
        "3690, 5, MARGINAL",
        "4310, 5, MARGINAL",
        "3670, 5, MET",
        "4330, 5, MET",
        "4000, 2.9, MET",
        "4000, 0, MET"
    })
    void staysClearOfHalfTheCriticalSpeedWhereJointsBend(double rpm, double degrees, Verdict verdict) {
        Finding finding = ShaftSpeedChecks.half(
                "rear", CRITICAL, held(rpm), Optional.of(Angle.ofDegrees(degrees)), ShaftHouse.packed());

        assertThat(finding.verdict()).isEqualTo(verdict);
    }

    @Test
    void needsTheAnglesOnlyNearHalfTheCriticalSpeed() {
        assertThat(ShaftSpeedChecks.half("rear", CRITICAL, held(4000), Optional.empty(), ShaftHouse.packed())
                        .verdict())
                .isEqualTo(Verdict.NOT_EVALUATED);
        assertThat(ShaftSpeedChecks.half("rear", CRITICAL, held(2000), Optional.empty(), ShaftHouse.packed())
                        .verdict())
                .isEqualTo(Verdict.MET);
    }

    @Test
    void warnsOfHoldingTheBounce() {
        AngularSpeed bounce = AngularSpeed.ofRpm(2500);

        assertThat(ShaftSpeedChecks.bounce("rear", bounce, held(2400), ShaftHouse.packed())
                        .verdict())
                .isEqualTo(Verdict.MARGINAL);
        assertThat(ShaftSpeedChecks.bounce("rear", bounce, held(3000), ShaftHouse.packed())
                        .verdict())
                .isEqualTo(Verdict.MET);
    }

    @Test
    void allowedAndNeededAreInverse() {
        assertThat(ShaftSpeedChecks.allowed(CRITICAL, ShaftHouse.packed()).toRpm())
                .isCloseTo(5600, within(1e-9));
        assertThat(ShaftSpeedChecks.needed(ShaftSpeedChecks.allowed(CRITICAL, ShaftHouse.packed()), ShaftHouse.packed())
                        .toRpm())
                .isCloseTo(8000, within(1e-9));
    }

    @Test
    void refusesImpossibleSpeeds() {
        assertThatThrownBy(() -> held(-1)).hasMessageContaining("out of range");
        assertThatThrownBy(() -> held(1e6)).hasMessageContaining("out of range");
    }

    @Test
    void hasCautions() {
        assertThat(ShaftSpeedCautions.whirl()).isNotEmpty();
        assertThat(ShaftSpeedCautions.strength()).isNotEmpty();
        assertThat(ShaftSpeedCautions.roadTest()).isNotEmpty();
    }
}
