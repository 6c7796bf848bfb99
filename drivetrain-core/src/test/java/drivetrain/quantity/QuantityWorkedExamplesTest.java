package drivetrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Factors and conversions against published ones; the sources stand beside the values. */
class QuantityWorkedExamplesTest {

    private static Kind<?> kindNamed(String name) {
        return Kinds.all().stream()
                .filter(kind -> kind.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "sp811-factors.csv", useHeadersInDisplayName = true)
    void convertsAsSpecialPublication811Prints(String kind, String unit, String printed, String exact, String read) {
        BigDecimal factor = new BigDecimal(printed.replace(" ", ""));
        double tolerance = exact.equals("yes")
                ? 4 * Math.ulp(factor.doubleValue())
                : factor.ulp().doubleValue() / 2;

        assertThat(kindNamed(kind).parse("1 " + unit).si()).as(read).isCloseTo(factor.doubleValue(), within(tolerance));
    }

    /** NIST SP 811 (2008), B.8, printed as T/K = (t/degF + 459.67)/1.8 and T/K = t/degC + 273.15; from memory. */
    @Test
    void convertsTemperaturesAsSpecialPublication811Prints() {
        for (double fahrenheit : new double[] {-459.67, -40, 0, 32, 59, 212}) {
            assertThat(Temperature.ofFahrenheit(fahrenheit).toKelvins())
                    .isCloseTo((fahrenheit + 459.67) / 1.8, within(1e-12));
        }
        assertThat(Temperature.ofCelsius(15).toKelvins()).isEqualTo(288.15);
        assertThat(Temperature.ofFahrenheit(-40).toCelsius()).isCloseTo(-40, within(1e-12));
    }

    /** 1 lb/(hp h) = 608.2774 g/kWh: derived from the factors of NIST SP 811 (2008), appendix B. */
    @Test
    void convertsSpecificFuelConsumption() {
        assertThat(SpecificFuelConsumption.parse("1 lb/(hp-h)").toGramsPerKilowattHour())
                .isCloseTo(608.2774, within(0.00005));
    }

    /** hp = lb ft x rpm / 5252: common practice, no source; 5252 is 33000 / (2 pi) rounded. */
    @Test
    void agreesWithTheRuleOfThumbForPower() {
        Power power = Torque.ofPoundFeet(460).at(AngularSpeed.ofRpm(4100));

        assertThat(power.toHorsepower()).isCloseTo(460.0 * 4100.0 / 5252.0, within(0.01));
        assertThat(power.toHorsepower()).isCloseTo(460.0 * 4100.0 * 2.0 * Math.PI / 33_000.0, within(1e-10));
    }

    /** Watt's definition, 33 000 ft lbf a minute, and 75 kgf m/s: the definitions printed in NIST SP 811 (2008), B.8. */
    @Test
    void keepsTheTwoHorsepowersApart() {
        assertThat(Power.ofHorsepower(1).ratioTo(Power.ofMetricHorsepower(1))).isCloseTo(1.0139, within(0.00005));
        assertThat(Volume.ofImperialGallons(1).ratioTo(Volume.ofUsGallons(1))).isCloseTo(1.20095, within(0.000005));
    }
}
