package drivetrain.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Length;
import java.math.BigDecimal;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The printed tables of the standard; each file names its source. */
class StandardAtmosphereWorkedExamplesTest {

    @ParameterizedTest
    @CsvFileSource(
            resources = "/drivetrain/atmosphere/standard-atmosphere-geometric.csv",
            useHeadersInDisplayName = true)
    void agreesWithTheTableByGeometricAltitude(double meters, String kelvins, String hectopascals, String density) {
        Air air = Air.standardAt(Length.ofMeters(meters));
        assertThat(air.temperature().toKelvins()).isCloseTo(value(kelvins), lastDigit(kelvins));
        assertThat(air.pressure().toHectopascals()).isCloseTo(value(hectopascals), lastDigit(hectopascals));
        assertThat(air.density().toKilogramsPerCubicMeter()).isCloseTo(value(density), lastDigit(density));
    }

    @ParameterizedTest
    @CsvFileSource(
            resources = "/drivetrain/atmosphere/standard-atmosphere-geopotential.csv",
            useHeadersInDisplayName = true)
    void agreesWithTheTableByGeopotentialAltitude(double meters, String kelvins, String hectopascals, String density) {
        Air air = StandardAtmosphere.at(Length.ofMeters(meters));
        assertThat(air.temperature().toKelvins()).isCloseTo(value(kelvins), lastDigit(kelvins));
        assertThat(air.pressure().toHectopascals()).isCloseTo(value(hectopascals), lastDigit(hectopascals));
        assertThat(air.density().toKilogramsPerCubicMeter()).isCloseTo(value(density), lastDigit(density));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/drivetrain/atmosphere/standard-atmosphere-feet.csv", useHeadersInDisplayName = true)
    void agreesWithTheTableInFeet(double feet, String fahrenheit, String psi) {
        Air air = Air.standardAt(Length.ofFeet(feet));
        assertThat(air.temperature().toFahrenheit()).isCloseTo(value(fahrenheit), lastDigit(fahrenheit));
        assertThat(air.pressure().toPsi()).isCloseTo(value(psi), lastDigit(psi));
    }

    private static double value(String printed) {
        return Double.parseDouble(printed);
    }

    /**
     * One and a half units of the last printed digit: the tables do not round alike (954.6129 hPa is printed 954.612, 898.7628 hPa 898.763), and the
     * two standards differ by 7e-7 in the gas constant.
     */
    private static Offset<Double> lastDigit(String printed) {
        return within(1.5 * Math.pow(10.0, -new BigDecimal(printed).scale()));
    }
}
