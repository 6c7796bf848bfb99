package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Density;
import drivetrain.quantity.KinematicViscosity;
import drivetrain.quantity.Length;
import drivetrain.quantity.MassFlow;
import drivetrain.quantity.Power;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.SpecificFuelConsumption;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.Volume;
import drivetrain.quantity.VolumeFlow;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures printed elsewhere; each resource and each test names its source. */
class FuelWorkedExamplesTest {

    @ParameterizedTest
    @CsvFileSource(resources = "friction-factor.csv", useHeadersInDisplayName = true)
    void agreesOnFrictionFactors(double reynolds, double roughness, double factor, double tolerance) {
        assertThat(PipeFlow.frictionFactor(reynolds, roughness)).isCloseTo(factor, within(factor * tolerance));
    }

    /** Haaland's formula as the tests of a public fluid-flow library evaluate it. */
    @Test
    void agreesOnHaaland() {
        assertThat(PipeFlow.haaland(1e5, 1e-4)).isCloseTo(0.018265053014793857, within(1e-15));
    }

    /** White, Fluid Mechanics, ch. 6: Haaland's formula varies less than 2 % from Colebrook's. */
    @ParameterizedTest
    @CsvSource({"4000, 0", "4000, 0.05", "1e5, 1e-4", "1e6, 0.01", "1e8, 1e-6"})
    void agreesWithHaalandWithinTwoPercent(double reynolds, double roughness) {
        double colebrook = PipeFlow.colebrook(reynolds, roughness);
        assertThat(PipeFlow.haaland(reynolds, roughness)).isCloseTo(colebrook, within(0.02 * colebrook));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "pipe-loss.csv", useHeadersInDisplayName = true)
    void agreesOnThePressureThatAPipeCosts(double kilopascals, double tolerance) {
        Pressure loss = PipeFlow.friction(
                VolumeFlow.ofUsGallonsPerHour(2.0 * 3600.0),
                Length.ofInches(2.067),
                Length.ofFeet(100.0),
                Length.ofInches(0.0018),
                Density.ofKilogramsPerCubicMeter(0.815 * 999.1),
                KinematicViscosity.ofSquareMillimetersPerSecond(2.7));
        assertThat(loss.toKilopascals()).isCloseTo(kilopascals, within(kilopascals * tolerance));
    }

    /** Hagen and Poiseuille: 128 mu l Q / (pi d4), the exact solution for laminar flow. */
    @Test
    void agreesWithHagenAndPoiseuille() {
        VolumeFlow flow = VolumeFlow.ofLitersPerHour(20.0);
        Pressure loss = PipeFlow.friction(
                flow,
                Length.ofMillimeters(8.0),
                Length.ofMeters(5.0),
                Length.ofMillimeters(0.01),
                Density.ofKilogramsPerCubicMeter(740.0),
                KinematicViscosity.ofSquareMillimetersPerSecond(0.6));
        double exact = 128.0 * 0.6e-6 * 740.0 * 5.0 * flow.toCubicMetersPerSecond() / (Math.PI * Math.pow(0.008, 4.0));
        assertThat(loss.toPascals()).isCloseTo(exact, within(1e-12 * exact));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "density.csv", useHeadersInDisplayName = true)
    void agreesOnTheVolumeCorrectionOfGasoline(double density15, double celsius, double factor) {
        Fuel fuel = Fuel.parse("gasoline, " + density15 + " kg/m3");
        assertThat(fuel.densityAt(Temperature.ofCelsius(celsius)).toKilogramsPerCubicMeter() / density15)
                .isCloseTo(factor, within(0.000005));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "vapor-pressure.csv", useHeadersInDisplayName = true)
    void agreesOnTheVaporPressureOfGasoline(double reidPsi, double fahrenheit, double psi) {
        Fuel fuel = Fuel.parse("gasoline, reid " + reidPsi + " psi");
        assertThat(fuel.vaporPressureAt(Temperature.ofFahrenheit(fahrenheit))
                        .orThrow()
                        .toPsi())
                .isCloseTo(psi, within(0.005));
    }

    /** The Reid test runs at 100 degF with four parts of air to one of fuel: the true vapor pressure there is a little above the Reid one (AP-42 chapter 7.1). */
    @Test
    void reidPressureIsAlmostTheVaporPressureAtItsTestTemperature() {
        double psi = Fuel.parse("gasoline, reid 10 psi")
                .vaporPressureAt(Temperature.ofFahrenheit(100.0))
                .orThrow()
                .toPsi();
        assertThat(psi).isBetween(10.0, 11.0);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "daily-vapor.csv", useHeadersInDisplayName = true)
    void agreesOnTheVaporOfADay(double elevationMeters, double grams) {
        assertThat(TankVapor.ofDay(
                                Fuel.parse("E10, reid 9 psi"),
                                Volume.ofUsGallons(19.1).times(0.6),
                                new Tank.Day(Temperature.ofFahrenheit(72.0), Temperature.ofFahrenheit(96.0)),
                                Length.ofMeters(elevationMeters))
                        .orThrow()
                        .toGrams())
                .isCloseTo(grams, within(0.005));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "wire.csv", useHeadersInDisplayName = true)
    void agreesOnCopperWire(int gauge, double inches, double ohmsPerThousandFeet) {
        Wire wire = Wire.ofGauge(Length.ofFeet(10.0), gauge);
        double diameter = Math.sqrt(wire.areaSquareMillimeters() * 4.0 / Math.PI) / 25.4;
        assertThat(diameter).isCloseTo(inches, within(0.00005));
        assertThat(wire.ohms() / 20.0 * 1000.0).isCloseTo(ohmsPerThousandFeet, within(0.001 * ohmsPerThousandFeet));
    }

    /** A trade article's dynamometer run: 226 lb/h at 440 hp, 0.514 lb/(hp h). */
    @Test
    void agreesOnTheFuelOfADynamometerRun() {
        MassFlow flow = FuelDemand.massFlow(
                Power.ofHorsepower(440.0), SpecificFuelConsumption.ofPoundsPerHorsepowerHour(0.514));
        assertThat(flow.toPoundsPerHour()).isCloseTo(226.0, within(0.5));
    }

    /** NIST SP 811 factors: 1 lb/(hp h) = 608.2774 g/kWh. */
    @Test
    void agreesOnTheUnitOfConsumption() {
        MassFlow flow =
                FuelDemand.massFlow(Power.ofKilowatts(1.0), SpecificFuelConsumption.ofPoundsPerHorsepowerHour(1.0));
        assertThat(flow.toKilogramsPerHour() * 1000.0).isCloseTo(608.2774, within(0.00005));
    }

    /** An injector maker's sheet: 1785 cc/min x 0.72 = 170.003 lb/h. */
    @Test
    void agreesOnTheFlowOfAnInjector() {
        Injectors injectors = Injectors.parse("1 x 1785 cc/min at 3 bar", name -> Optional.empty());
        assertThat(injectors.each().flow().toPoundsPerHour()).isCloseTo(170.003, within(0.0005));
    }

    /** A pump maker's chart quoted in a trade article: from 12 to 13.5 V at 45 psi the flow rises from 700 to 800 lb/h; similarity of a stiff pump within 2 %. */
    @Test
    void agreesOnWhatVoltageDoesToAPump() {
        VolumeFlow low = VolumeFlow.ofLitersPerHour(425.0);
        PumpPoint none = new PumpPoint(Pressure.ofPsi(30.0), low, Optional.empty());
        PumpPoint more = new PumpPoint(Pressure.ofPsi(60.0), low, Optional.empty());
        PumpCurve curve = new PumpCurve(Voltage.ofVolts(12.0), java.util.List.of(none, more));
        MeasuredPump pump = new MeasuredPump("stiff", java.util.List.of(curve));
        double ratio = pump.flowAt(Pressure.ofPsi(45.0), Voltage.ofVolts(13.5))
                .orThrow()
                .ratioTo(low);
        assertThat(ratio).isCloseTo(800.0 / 700.0, within(0.02));
    }
}
