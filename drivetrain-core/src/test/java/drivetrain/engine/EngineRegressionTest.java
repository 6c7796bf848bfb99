package drivetrain.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.AngularSpeed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The library's own figures for invented engines: a change here is a change of results and belongs in the change log. */
class EngineRegressionTest {

    @Test
    void peakPowerOfACurve() {
        OperatingPoint peak = Engine.parse(
                        "310 lb-ft at 1000 rpm, 400 lb-ft at 2500 rpm, 460 lb-ft at 4100 rpm, 387 lb-ft at 5700 rpm, max 5700 rpm")
                .peakPower()
                .orThrow();
        assertThat(peak.speed().toRpm()).isCloseTo(5444.32316192243, within(1e-6));
        assertThat(peak.power().toHorsepower()).isCloseTo(422.6548677084696, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "2400, 444.18322427126714",
        "3600, 458.631766805473",
        "4400, 456.36596547325445",
        "5600, 393.7849348878853",
        "6400, 333.6352302204473"
    })
    void estimateOfAGasolineEngine(double rpm, double poundFeet) {
        Engine engine = Engine.parse("420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, max 6600 rpm");
        assertThat(engine.torqueAt(AngularSpeed.ofRpm(rpm)).orThrow().toPoundFeet())
                .isCloseTo(poundFeet, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1100, 571.7511111111111", "2500, 552.8839586954243", "3900, 440.32117293383965"})
    void estimateOfADiesel(double rpm, double newtonMeters) {
        Engine engine = Engine.parse("180 kW at 4000 rpm, 580 Nm at 1500 rpm, diesel, turbocharged, max 4200 rpm");
        assertThat(engine.torqueAt(AngularSpeed.ofRpm(rpm)).orThrow().toNewtonMeters())
                .isCloseTo(newtonMeters, within(1e-9));
    }
}
