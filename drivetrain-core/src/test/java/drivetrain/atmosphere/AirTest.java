package drivetrain.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AirTest {

    private static final Air WARM = Air.of(Pressure.ofHectopascals(1000.0), Temperature.ofCelsius(30.0));

    @Test
    void standardAirIsThatOfSeaLevel() {
        assertThat(Air.standard()).isEqualTo(Air.standardAt(Length.ofMeters(0.0)));
        assertThat(Air.standard().pressure().toPascals()).isEqualTo(101_325.0);
        assertThat(Air.standard().temperature().toCelsius()).isCloseTo(15.0, within(1e-9));
        assertThat(Air.standard().vaporPressure().toPascals()).isZero();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/drivetrain/atmosphere/saturation-pressure.csv", useHeadersInDisplayName = true)
    void saturationPressureAgreesWithTheHandbook(double celsius, double hectopascals) {
        assertThat(WaterVapor.saturationPressure(Temperature.ofCelsius(celsius)).toHectopascals())
                .isCloseTo(hectopascals, within(0.006 * hectopascals));
    }

    @Test
    void humidityLowersDryPressureAndDensity() {
        Air humid = WARM.withRelativeHumidity(0.8);
        assertThat(humid.pressure()).isEqualTo(WARM.pressure());
        assertThat(humid.dryPressure().plus(humid.vaporPressure()).si()).isCloseTo(1e5, within(1e-9));
        assertThat(humid.dryPressure().isLessThan(WARM.dryPressure())).isTrue();
        assertThat(humid.density().isLessThan(WARM.density())).isTrue();
        assertThat(WARM.withRelativeHumidity(0.0)).isEqualTo(WARM);
    }

    /** Virtual temperature: humid air is as dense as dry air of T / (1 - (1 - 0.622) e / p); definition, 0.622 = 18.015 28 / 28.964 42. */
    @Test
    void densityOfHumidAirIsThatOfItsVirtualTemperature() {
        Air humid = WARM.withRelativeHumidity(0.6);
        double ratio = humid.vaporPressure().ratioTo(humid.pressure());
        double virtual = humid.temperature().si() / (1.0 - (1.0 - 18.01528 / 28.96442) * ratio);
        Air dry = Air.of(humid.pressure(), Temperature.ofKelvins(virtual));
        assertThat(humid.density().si()).isCloseTo(dry.density().si(), within(1e-12));
    }

    @Test
    void keepsTheVaporWhenTheTemperatureChanges() {
        Air humid = WARM.withRelativeHumidity(0.5);
        Air cooler = humid.withTemperature(Temperature.ofCelsius(25.0));
        assertThat(cooler.vaporPressure()).isEqualTo(humid.vaporPressure());
        assertThat(cooler.temperature().toCelsius()).isCloseTo(25.0, within(1e-9));
    }

    @Test
    void pressureIsContinuousAtTheTropopause() {
        assertThat(StandardAtmosphere.pascals(11_000.0 - 1e-6))
                .isCloseTo(StandardAtmosphere.pascals(11_000.0), within(1e-5));
    }

    /** The weight of the layer: dp = -rho g dH, checked by central differences. */
    @ParameterizedTest
    @ValueSource(doubles = {-1500.0, 0.0, 2500.0, 10_500.0, 11_500.0, 19_000.0})
    void pressureFallsByTheWeightOfTheAir(double meters) {
        double h = 1.0;
        double slope = (StandardAtmosphere.pascals(meters + h) - StandardAtmosphere.pascals(meters - h)) / (2.0 * h);
        double density =
                StandardAtmosphere.at(Length.ofMeters(meters)).density().si();
        assertThat(-slope).isCloseTo(density * 9.80665, within(1e-6 * -slope));
    }

    @Test
    void geopotentialAltitudeIsLowerThanElevation() {
        assertThat(StandardAtmosphere.geopotential(Length.ofMeters(4000.0)).toMeters())
                .isCloseTo(3997.0, within(0.5)); // ISO 2533:1975, table 5
        assertThat(StandardAtmosphere.geopotential(Length.ofMeters(11_000.0)).toMeters())
                .isCloseTo(10_981.0, within(0.5)); // same
    }

    @ParameterizedTest
    @ValueSource(doubles = {-2001.0, 20_001.0})
    void rejectsElevationsOutsideTheLayers(double meters) {
        assertThatThrownBy(() -> Air.standardAt(Length.ofMeters(meters)))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("elevation")
                .hasMessageContaining("-2000 to 20000 m");
        assertThatThrownBy(() -> StandardAtmosphere.at(Length.ofMeters(meters))).isInstanceOf(RefusedException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    void rejectsHumidityThatIsNotAFraction(double humidity) {
        assertThatThrownBy(() -> WARM.withRelativeHumidity(humidity))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("0 to 1");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-46.0, 61.0})
    void rejectsHumidAirOutsideTheVaporFormula(double celsius) {
        Air air = WARM.withTemperature(Temperature.ofCelsius(celsius));
        assertThatThrownBy(() -> air.withRelativeHumidity(0.5))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("-45 to 60 degC");
    }

    @ParameterizedTest
    @CsvSource({"5, 300, 0", "1301, 300, 0", "1000, 100, 0", "1000, 360, 0", "1000, 300, -1", "1000, 300, 1000"})
    void rejectsImpossibleAir(double hectopascals, double kelvins, double vapor) {
        Pressure pressure = Pressure.ofHectopascals(hectopascals);
        Temperature temperature = Temperature.ofKelvins(kelvins);
        Pressure vaporPressure = Pressure.ofHectopascals(vapor);
        assertThatThrownBy(() -> new Air(pressure, temperature, vaporPressure))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("allowed");
    }

    @Test
    void explainsTheDensity() {
        var working = WARM.withRelativeHumidity(0.5).working();
        assertThat(working.inputs()).extracting(input -> input.symbol()).containsExactly("p", "T", "e");
        assertThat(working.steps()).hasSize(2);
        assertThat(working.steps().get(1).result().text(UnitSystem.METRIC)).endsWith("kg/m3");
        assertThat(working.sources()).contains(StandardAtmosphere.SOURCE);
    }
}
