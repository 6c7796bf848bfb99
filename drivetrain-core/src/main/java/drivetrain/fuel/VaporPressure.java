package drivetrain.fuel;

import drivetrain.finding.Source;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;

/**
 * True vapor pressure of gasoline from its Reid vapor pressure: US EPA AP-42 chapter 7.1, motor gasoline, the closed form of its nomograph.
 *
 * <p>With T in degrees Rankine, R the Reid vapor pressure in psi and S the slope of the distillation curve, p = exp((0.7553 - 413.0/T) S^0.5 log10 R -
 * (1.854 - 1042/T) S^0.5 + (2416/T - 2.013) log10 R - 8742/T + 15.64) psi.
 */
final class VaporPressure {

    static final Source SOURCE =
            Source.handbook("US EPA AP-42 chapter 7.1: true vapor pressure of refined petroleum stocks");

    private static final double RANKINE_SHIFT = 459.6;

    private VaporPressure() {}

    static Pressure of(Pressure reid, Temperature temperature) {
        double t = temperature.toFahrenheit() + RANKINE_SHIFT;
        double slope = Math.sqrt(FuelConstant.of("gasoline-distillation-slope").value());
        double logReid = Math.log10(reid.toPsi());
        double exponent = (0.7553 - 413.0 / t) * slope * logReid
                - (1.854 - 1042.0 / t) * slope
                + (2416.0 / t - 2.013) * logReid
                - 8742.0 / t
                + 15.64;
        return Pressure.ofPsi(Math.exp(exponent));
    }
}
