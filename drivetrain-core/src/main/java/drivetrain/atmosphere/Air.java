package drivetrain.atmosphere;

import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Density;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;
import drivetrain.refusal.Refusal;

/**
 * The state of the air at one place.
 *
 * @param pressure the absolute pressure at the place (station pressure), 1 to 130 kPa
 * @param temperature the temperature, 150 to 350 K
 * @param vaporPressure the part of the pressure that is water vapor, zero or more and less than the pressure
 */
public record Air(Pressure pressure, Temperature temperature, Pressure vaporPressure) {

    private static final Pressure LOWEST_PRESSURE = Pressure.ofKilopascals(1.0);
    private static final Pressure HIGHEST_PRESSURE = Pressure.ofKilopascals(130.0);
    private static final Temperature LOWEST_TEMPERATURE = Temperature.ofKelvins(150.0);
    private static final Temperature HIGHEST_TEMPERATURE = Temperature.ofKelvins(350.0);
    private static final Pressure NO_VAPOR = Pressure.ofPascals(0.0);
    private static final Display<Density> DENSITY =
            new Display<>(Density.KILOGRAM_PER_CUBIC_METER, 4, Density.KILOGRAM_PER_CUBIC_METER, 4);
    private static final Air STANDARD = StandardAtmosphere.at(Length.ofMeters(0.0));

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public Air {
        pressure.requireBetween("air pressure", LOWEST_PRESSURE, HIGHEST_PRESSURE, Pressure.HECTOPASCAL);
        if (temperature.isLessThan(LOWEST_TEMPERATURE) || temperature.isGreaterThan(HIGHEST_TEMPERATURE)) {
            throw Refusal.of("air temperature", temperature.format(Temperature.CELSIUS, 1), "is out of range")
                    .allowing("-123.15 to 76.85 degC")
                    .asException();
        }
        if (vaporPressure.isLessThan(NO_VAPOR) || !vaporPressure.isLessThan(pressure)) {
            throw Refusal.of("vapor pressure", vaporPressure.format(Pressure.HECTOPASCAL, 1), "is out of range")
                    .allowing("0 hPa to less than the air pressure, " + pressure.format(Pressure.HECTOPASCAL, 1))
                    .asException();
        }
    }

    /**
     * Makes dry air.
     *
     * @param pressure the absolute pressure at the place
     * @param temperature the temperature
     * @return the air
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public static Air of(Pressure pressure, Temperature temperature) {
        return new Air(pressure, temperature, NO_VAPOR);
    }

    /**
     * Returns the standard air at sea level: 1013.25 hPa, 15 degC, dry.
     *
     * @return the air of ISO 2533 at altitude zero
     */
    public static Air standard() {
        return STANDARD;
    }

    /**
     * Returns the standard air at an elevation.
     *
     * @param elevation the geometric elevation that a map shows, -2 to 20 km
     * @return the dry air of ISO 2533 there
     * @throws drivetrain.refusal.RefusedException if the elevation is out of range
     */
    public static Air standardAt(Length elevation) {
        return StandardAtmosphere.air(StandardAtmosphere.geopotential(elevation).si());
    }

    /**
     * Returns this air with another temperature, at the same pressure; the vapor pressure stays.
     *
     * @param other the temperature
     * @return the air
     * @throws drivetrain.refusal.RefusedException if the temperature is out of range
     */
    public Air withTemperature(Temperature other) {
        return new Air(pressure, other, vaporPressure);
    }

    /**
     * Returns this air with a relative humidity, at the same total pressure and temperature.
     *
     * @param relativeHumidity the vapor pressure over the saturation pressure over water, 0 to 1
     * @return the air
     * @throws drivetrain.refusal.RefusedException if the humidity is not from 0 to 1, or the temperature is outside -45 to 60 degC
     */
    public Air withRelativeHumidity(double relativeHumidity) {
        if (!(relativeHumidity >= 0.0 && relativeHumidity <= 1.0)) {
            throw Refusal.of("relative humidity", Double.toString(relativeHumidity), "is out of range")
                    .allowing("0 to 1 (0 to 100 %)")
                    .asException();
        }
        Pressure vapor = WaterVapor.saturationPressure(temperature).times(relativeHumidity);
        return new Air(pressure, temperature, vapor);
    }

    /**
     * Returns the pressure of the dry part of the air, which is what feeds the fire.
     *
     * @return the pressure less the vapor pressure
     */
    public Pressure dryPressure() {
        return pressure.minus(vaporPressure);
    }

    /**
     * Returns the density.
     *
     * @return the sum of the densities of dry air and vapor, each as a perfect gas
     */
    public Density density() {
        double perKelvin =
                dryPressure().si() / StandardAtmosphere.GAS_CONSTANT + vaporPressure.si() / WaterVapor.GAS_CONSTANT;
        return Density.ofKilogramsPerCubicMeter(perKelvin / temperature.si());
    }

    /**
     * Explains the dry pressure and the density.
     *
     * @return the working
     */
    public Working working() {
        return Working.of("density of the air")
                .input("air pressure", "p", Figure.of(pressure, Display.AIR_PRESSURE), "given")
                .input("temperature", "T", Figure.of(temperature, Display.TEMPERATURE), "given")
                .input("vapor pressure", "e", Figure.of(vaporPressure, Display.AIR_PRESSURE), "given")
                .step("dry pressure", "pd = p - e", Figure.of(dryPressure(), Display.AIR_PRESSURE))
                .step(
                        "density",
                        "rho = pd / (R T) + e / (Rv T), R = "
                                + DecimalText.fixed(StandardAtmosphere.GAS_CONSTANT, 2) + " J/(kg K), Rv = "
                                + DecimalText.fixed(WaterVapor.GAS_CONSTANT, 2) + " J/(kg K)",
                        Figure.of(density(), DENSITY))
                .source(StandardAtmosphere.SOURCE)
                .source(Source.derived("perfect gases and Dalton's law of partial pressures"))
                .build();
    }
}
