package drivetrain.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Assumption;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Power;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Torque;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PowerCorrectionTest {

    private static final EngineFactor FACTOR = new EngineFactor(50.0, 1.0);

    private static PowerCorrection of(CorrectionRule rule, double hectopascals, double celsius, Aspiration aspiration) {
        Pressure dry = Pressure.ofHectopascals(hectopascals);
        Temperature temperature = Temperature.ofCelsius(celsius);
        return switch (rule) {
            case SAE_J1349 -> PowerCorrection.saeJ1349(dry, temperature, aspiration);
            case ISO_1585_SPARK -> PowerCorrection.iso1585Spark(dry, temperature, aspiration);
            case ISO_1585_COMPRESSION -> PowerCorrection.iso1585Compression(dry, temperature, aspiration, FACTOR);
        };
    }

    @ParameterizedTest
    @EnumSource(CorrectionRule.class)
    void isOneInTheReferenceAir(CorrectionRule rule) {
        for (Aspiration aspiration : Aspiration.values()) {
            assertThat(of(rule, 990.0, 25.0, aspiration).factor()).isCloseTo(1.0, within(1e-12));
        }
    }

    @ParameterizedTest
    @EnumSource(CorrectionRule.class)
    void isAboveOneInThinOrHotAir(CorrectionRule rule) {
        assertThat(of(rule, 950.0, 25.0, Aspiration.NATURAL).factor()).isGreaterThan(1.0);
        assertThat(of(rule, 990.0, 35.0, Aspiration.NATURAL).factor()).isGreaterThan(1.0);
        assertThat(of(rule, 1020.0, 10.0, Aspiration.NATURAL).factor()).isLessThan(1.0);
    }

    @Test
    void goesThereAndBack() {
        PowerCorrection correction = of(CorrectionRule.SAE_J1349, 980.0, 35.0, Aspiration.NATURAL);
        Power rated = Power.ofHorsepower(420.0);
        assertThat(correction.fromReference(rated).isLessThan(rated)).isTrue();
        assertThat(correction.toReference(correction.fromReference(rated)).toHorsepower())
                .isCloseTo(420.0, within(1e-9));
        Torque torque = Torque.ofPoundFeet(460.0);
        assertThat(correction.toReference(correction.fromReference(torque)).toPoundFeet())
                .isCloseTo(460.0, within(1e-9));
    }

    /** Formula by hand: fa = 99/95 (308/298)^0.7 = 1.0664, fm = 0.036 x 50 - 1.14 = 0.66, fa^fm = 1.0434. */
    @Test
    void correctsADieselByItsEngineFactor() {
        assertThat(of(CorrectionRule.ISO_1585_COMPRESSION, 950.0, 35.0, Aspiration.NATURAL)
                        .factor())
                .isCloseTo(Math.pow(99.0 / 95.0 * Math.pow(308.0 / 298.0, 0.7), 0.66), within(1e-12));
        assertThat(of(CorrectionRule.ISO_1585_COMPRESSION, 950.0, 35.0, Aspiration.SUPERCHARGED)
                        .factor())
                .isEqualTo(of(CorrectionRule.ISO_1585_COMPRESSION, 950.0, 35.0, Aspiration.NATURAL)
                        .factor());
        assertThat(of(CorrectionRule.ISO_1585_COMPRESSION, 950.0, 35.0, Aspiration.TURBOCHARGED)
                        .factor())
                .isCloseTo(Math.pow(Math.pow(99.0 / 95.0, 0.7) * Math.pow(308.0 / 298.0, 1.2), 0.66), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"37.2, 1, 0.1992", "40, 1, 0.3", "65, 1, 1.2", "20, 1, 0.1992", "90, 1, 1.2", "100, 2, 0.66"})
    void engineFactorIsHeldOutsideItsRange(double fuel, double ratio, double expected) {
        assertThat(new EngineFactor(fuel, ratio).value()).isCloseTo(expected, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "-5, 1", "301, 1", "NaN, 1", "50, 0.99", "50, 10.1", "50, NaN"})
    void rejectsImpossibleFuelAndBoost(double fuel, double ratio) {
        assertThatThrownBy(() -> new EngineFactor(fuel, ratio))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("out of range");
    }

    @ParameterizedTest
    @CsvSource({
        "SAE_J1349, 980, 35, MET",
        "SAE_J1349, 900, 25, MARGINAL",
        "SAE_J1349, 1050, -5, MARGINAL",
        "ISO_1585_SPARK, 900, 25, MARGINAL",
        "ISO_1585_COMPRESSION, 900, 25, MET",
        "ISO_1585_COMPRESSION, 800, 45, MARGINAL"
    })
    void flagsAFactorBeyondTheRangeOfTheRule(
            CorrectionRule rule, double hectopascals, double celsius, Verdict verdict) {
        assertThat(of(rule, hectopascals, celsius, Aspiration.NATURAL).findings())
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(verdict);
                    assertThat(finding.statement()).contains(verdict == Verdict.MET ? "lies in" : "extrapolation");
                });
    }

    @Test
    void flagsABoostedSparkEngine() {
        assertThat(of(CorrectionRule.SAE_J1349, 980, 35, Aspiration.SUPERCHARGED)
                        .assumptions())
                .singleElement()
                .matches(Assumption::flagged);
        assertThat(of(CorrectionRule.ISO_1585_SPARK, 980, 35, Aspiration.TURBOCHARGED)
                        .assumptions())
                .singleElement()
                .matches(Assumption::flagged);
        assertThat(of(CorrectionRule.ISO_1585_COMPRESSION, 980, 35, Aspiration.TURBOCHARGED)
                        .assumptions())
                .singleElement()
                .matches(Assumption::flagged);
        assertThat(of(CorrectionRule.ISO_1585_COMPRESSION, 980, 35, Aspiration.SUPERCHARGED)
                        .assumptions())
                .isEmpty();
        assertThat(of(CorrectionRule.SAE_J1349, 980, 35, Aspiration.NATURAL).assumptions())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {199.0, 1201.0})
    void rejectsImpossiblePressure(double hectopascals) {
        assertThatThrownBy(() -> of(CorrectionRule.SAE_J1349, hectopascals, 25.0, Aspiration.NATURAL))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("200 to 1200 hPa");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-61.0, 81.0})
    void rejectsImpossibleTemperature(double celsius) {
        assertThatThrownBy(() -> of(CorrectionRule.SAE_J1349, 990.0, celsius, Aspiration.NATURAL))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("-60 to 80 degC");
    }

    @ParameterizedTest
    @EnumSource(CorrectionRule.class)
    void explainsTheFactor(CorrectionRule rule) {
        var working = of(rule, 980.0, 35.0, Aspiration.NATURAL).working();
        assertThat(working.question()).contains(rule.label());
        assertThat(working.sources()).containsExactly(rule.source());
        assertThat(working.steps()).hasSize(rule == CorrectionRule.ISO_1585_COMPRESSION ? 4 : 2);
        assertThat(working.steps().get(0).result().number(drivetrain.quantity.UnitSystem.US))
                .isCloseTo(308.0, within(1e-9));
    }

    @Test
    void explainsTheAirFactorOfATurbochargedDiesel() {
        var working = of(CorrectionRule.ISO_1585_COMPRESSION, 980.0, 35.0, Aspiration.TURBOCHARGED)
                .working();
        assertThat(working.steps().get(1).formula()).contains("^1.2");
    }
}
