package drivetrain.fuel;

import drivetrain.quantity.Density;
import drivetrain.quantity.KinematicViscosity;
import drivetrain.quantity.Temperature;

/**
 * A fuel at its temperature in the lines.
 *
 * @param fuel the fuel
 * @param temperature the temperature, -40 to 90 degC
 */
public record FlowingFuel(Fuel fuel, Temperature temperature) {

    /**
     * Checks the temperature.
     *
     * @throws drivetrain.refusal.RefusedException if it is out of range
     */
    public FlowingFuel {
        Fuel.requireCarried(temperature);
    }

    /**
     * Returns the density.
     *
     * @return the density at the temperature
     */
    public Density density() {
        return fuel.densityAt(temperature);
    }

    /**
     * Returns the viscosity, which is that at 20 degC.
     *
     * @return the kinematic viscosity
     */
    public KinematicViscosity viscosity() {
        return fuel.viscosity();
    }
}
