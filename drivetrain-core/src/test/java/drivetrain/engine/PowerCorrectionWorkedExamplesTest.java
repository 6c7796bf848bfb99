package drivetrain.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Factors of the quoted formulas; the file names its source. */
class PowerCorrectionWorkedExamplesTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/drivetrain/engine/power-correction.csv", useHeadersInDisplayName = true)
    void agreesWithTheQuotedFormulas(CorrectionRule rule, double hectopascals, double celsius, double factor) {
        Pressure dry = Pressure.ofHectopascals(hectopascals);
        Temperature temperature = Temperature.ofCelsius(celsius);
        PowerCorrection correction = rule == CorrectionRule.SAE_J1349
                ? PowerCorrection.saeJ1349(dry, temperature, Aspiration.NATURAL)
                : PowerCorrection.iso1585Spark(dry, temperature, Aspiration.NATURAL);
        assertThat(correction.rule()).isEqualTo(rule);
        assertThat(correction.factor()).isCloseTo(factor, within(0.5e-5));
    }
}
