package drivetrain.atmosphere;

import drivetrain.finding.Source;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;

/** Saturation of air with water vapor, by Magnus' form with the constants of the World Meteorological Organization. */
public final class WaterVapor {

    /** Gas constant of water vapor, 8314.32 J/(kmol K) / 18.015 28 kg/kmol = 461.51 J/(kg K). */
    static final double GAS_CONSTANT = 8314.32 / 18.01528;

    /** The lowest temperature of the form, -45 degC. */
    public static final Temperature LOWEST = Temperature.ofCelsius(-45.0);

    /** The highest temperature of the form, 60 degC. */
    public static final Temperature HIGHEST = Temperature.ofCelsius(60.0);

    /** Where the form and its constants come from. */
    public static final Source SOURCE = Source.standard("WMO-No. 8 (2008), annex 4.B, vapor pressure over water,"
            + " as quoted in a weather-station maker's manual");

    private static final double SCALE_PASCALS = 611.2;
    private static final double FACTOR = 17.62;
    private static final double OFFSET_CELSIUS = 243.12;

    private WaterVapor() {}

    /**
     * Returns the vapor pressure of saturated air over water.
     *
     * @param temperature the temperature, {@link #LOWEST} to {@link #HIGHEST}
     * @return 6.112 hPa exp(17.62 t / (243.12 + t)), t in degC
     * @throws drivetrain.refusal.RefusedException if the temperature is out of range
     */
    public static Pressure saturationPressure(Temperature temperature) {
        if (temperature.isLessThan(LOWEST) || temperature.isGreaterThan(HIGHEST)) {
            throw drivetrain.refusal.Refusal.of(
                            "temperature of humid air",
                            temperature.format(Temperature.CELSIUS, 1),
                            "is outside the range of the vapor pressure formula")
                    .allowing("-45 to 60 degC")
                    .asException();
        }
        double t = temperature.toCelsius();
        return Pressure.ofPascals(SCALE_PASCALS * Math.exp(FACTOR * t / (OFFSET_CELSIUS + t)));
    }
}
