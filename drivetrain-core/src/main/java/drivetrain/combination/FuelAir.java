package drivetrain.combination;

import drivetrain.fuel.Fuel;
import drivetrain.quantity.Length;
import drivetrain.quantity.Temperature;
import java.util.Optional;

/**
 * What the order's air tells a fuel supply.
 *
 * @param altitude its altitude, where the order names one; that of the standard air is sea level
 * @param temperature its temperature, where the order names one that a fuel can have
 */
public record FuelAir(Optional<Length> altitude, Optional<Temperature> temperature) {

    /** Reads the air as the order words it. */
    static FuelAir of(Optional<String> air) {
        return new FuelAir(
                air.flatMap(AirText::altitude),
                air.flatMap(AirText::temperature).filter(Fuel::isCarried));
    }
}
