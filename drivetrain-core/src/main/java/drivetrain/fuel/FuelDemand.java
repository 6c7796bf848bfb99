package drivetrain.fuel;

import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Density;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.MassFlow;
import drivetrain.quantity.Power;
import drivetrain.quantity.SpecificFuelConsumption;
import drivetrain.quantity.VolumeFlow;

/**
 * The fuel that a power needs: mass flow = power x specific consumption, volume flow = mass flow / density.
 *
 * @param power the power that the fuel is burned for, greater than zero
 * @param consumption the specific consumption
 * @param density the density of the fuel as it is pumped
 */
public record FuelDemand(Power power, SpecificFuelConsumption consumption, Density density) {

    private static final Source RULE = Source.derived("specific fuel consumption is fuel mass per work");

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is zero, negative or out of range
     */
    public FuelDemand {
        power.requirePositive("power");
        Consumption.requirePlausible(consumption);
        density.requirePositive("density of the fuel");
    }

    /**
     * Returns the fuel mass that a power needs, for use without the rest of a fuel supply.
     *
     * @param power the power
     * @param consumption the specific consumption
     * @return their product
     */
    public static MassFlow massFlow(Power power, SpecificFuelConsumption consumption) {
        return MassFlow.ofKilogramsPerSecond(power.toWatts() * consumption.toKilogramsPerJoule());
    }

    /**
     * Returns the power that a mass flow of fuel makes.
     *
     * @param flow the mass flow
     * @param consumption the specific consumption
     * @return the power
     */
    public static Power powerOf(MassFlow flow, SpecificFuelConsumption consumption) {
        return Power.ofWatts(flow.toKilogramsPerSecond() / consumption.toKilogramsPerJoule());
    }

    /**
     * Returns the volume of a mass flow.
     *
     * @param mass the mass flow
     * @param density the density
     * @return the volume flow
     */
    public static VolumeFlow volumeFlow(MassFlow mass, Density density) {
        return VolumeFlow.ofCubicMetersPerSecond(mass.toKilogramsPerSecond() / density.toKilogramsPerCubicMeter());
    }

    static MassFlow massFlow(VolumeFlow volume, Density density) {
        return MassFlow.ofKilogramsPerSecond(volume.toCubicMetersPerSecond() * density.toKilogramsPerCubicMeter());
    }

    /**
     * Returns the mass flow.
     *
     * @return the mass flow
     */
    public MassFlow mass() {
        return massFlow(power, consumption);
    }

    /**
     * Returns the volume flow.
     *
     * @return the volume flow at the density
     */
    public VolumeFlow volume() {
        return volumeFlow(mass(), density);
    }

    /**
     * Explains the demand.
     *
     * @return the working
     */
    public Working working() {
        return Working.of("fuel that the engine needs")
                .input("power", "P", Figure.of(power, Display.POWER), "engine")
                .input(
                        "specific fuel consumption",
                        "b",
                        Figure.of(consumption, Display.SPECIFIC_CONSUMPTION),
                        "given or usual for the kind of engine")
                .input("density of the fuel", "rho", Figure.of(density, Display.DENSITY), "fuel")
                .step("fuel by mass", "m = P b", Figure.of(mass(), Display.MASS_FLOW))
                .step("fuel by volume", "Q = m / rho", Figure.of(volume(), Display.VOLUME_FLOW))
                .source(RULE)
                .build();
    }
}
