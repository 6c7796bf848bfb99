package drivetrain.fuel;

import drivetrain.quantity.Density;
import drivetrain.quantity.MassFlow;
import drivetrain.quantity.Pressure;
import drivetrain.refusal.Refusal;

/**
 * One injector, held open: its flow by mass at one pressure with a test fluid of one density.
 *
 * <p>Through an orifice the mass flow is in proportion to the square root of pressure difference times density.
 *
 * @param name the name in a catalog, or the literal text
 * @param flow the flow by mass, 0.1 to 500 kg/h
 * @param pressure the pressure difference at which it was measured, 0.5 to 20 bar
 * @param testDensity the density of the fluid that it was measured with
 * @param testDensityGiven true if the density was given, false if it is the usual one
 */
public record Injector(String name, MassFlow flow, Pressure pressure, Density testDensity, boolean testDensityGiven) {

    static final MassFlow LEAST_FLOW = MassFlow.ofKilogramsPerHour(0.1);
    static final MassFlow MOST_FLOW = MassFlow.ofKilogramsPerHour(500.0);
    static final Pressure LEAST_PRESSURE = Pressure.ofBar(0.5);

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public Injector {
        if (name.isBlank()) {
            throw Refusal.of("injector", name, "has no name").asException();
        }
        flow.requireBetween("flow of the injector", LEAST_FLOW, MOST_FLOW, MassFlow.KILOGRAM_PER_HOUR);
        pressure.requireBetween("pressure of the injector", LEAST_PRESSURE, PumpPoint.MOST_PRESSURE, Pressure.BAR);
        testDensity.requireBetween(
                "density of the test fluid", Fuel.LEAST_DENSITY, Fuel.MOST_DENSITY, Density.KILOGRAM_PER_CUBIC_METER);
    }

    /**
     * Returns the density that a flow by volume is converted with when none is given.
     *
     * @return 720 kg/m3
     */
    public static Density usualTestDensity() {
        return Density.ofKilogramsPerCubicMeter(
                FuelConstant.of("injector-test-density").value());
    }

    /**
     * Returns the flow when held open.
     *
     * @param difference the pressure in the rail above that in the manifold; nothing flows at zero and below
     * @param density the density of the fuel
     * @return the flow by mass
     */
    public MassFlow flowAt(Pressure difference, Density density) {
        double pressures = Math.max(0.0, difference.ratioTo(pressure));
        return flow.times(Math.sqrt(pressures * density.ratioTo(testDensity)));
    }
}
