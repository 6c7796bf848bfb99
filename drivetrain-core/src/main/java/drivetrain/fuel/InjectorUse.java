package drivetrain.fuel;

import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Density;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.MassFlow;
import drivetrain.quantity.Pressure;

/**
 * How much of the time the injectors stand open.
 *
 * @param injectors the injectors
 * @param demand the fuel that the engine burns
 * @param difference the pressure in the rail above that in the manifold
 * @param density the density of the fuel
 */
public record InjectorUse(Injectors injectors, MassFlow demand, Pressure difference, Density density) {

    private static final Source RULE =
            Source.derived("flow through an orifice: square root of pressure difference times density");

    /**
     * Returns the flow of all injectors held open.
     *
     * @return the flow; not evaluated where their number is not known
     */
    public Outcome<MassFlow> open() {
        return injectors.flowAt(difference, density);
    }

    /**
     * Returns the share of the time that they stand open.
     *
     * @return the duty, above 1 where they are too small; not evaluated where no pressure is left
     */
    public Outcome<Double> duty() {
        return open().then(open -> open.si() > 0.0
                ? Outcome.of(demand.ratioTo(open))
                : Outcome.notEvaluated("no pressure is left above the manifold's"));
    }

    /**
     * Explains the duty.
     *
     * @return the working
     */
    public Working working() {
        Working.Builder working = Working.of("how long the injectors stand open")
                .input("fuel by mass", "m", Figure.of(demand, Display.MASS_FLOW), "demand")
                .input(
                        "flow of one injector as measured",
                        "m_0",
                        Figure.of(injectors.each().flow(), Display.MASS_FLOW),
                        "injectors")
                .input(
                        "pressure as measured",
                        "p_0",
                        Figure.of(injectors.each().pressure(), Display.GAUGE_PRESSURE),
                        "injectors")
                .input(
                        "density of the test fluid",
                        "rho_0",
                        Figure.of(injectors.each().testDensity(), Display.DENSITY),
                        "injectors")
                .input("density of the fuel", "rho", Figure.of(density, Display.DENSITY), "fuel")
                .input(
                        "pressure in the rail above the manifold",
                        "p_d",
                        Figure.of(difference, Display.GAUGE_PRESSURE),
                        "supply");
        open().value()
                .ifPresent(open -> working.step(
                        "flow of all held open",
                        "m_s = N m_0 sqrt(p_d rho / (p_0 rho_0))",
                        Figure.of(open, Display.MASS_FLOW)));
        duty().value().ifPresent(duty -> working.step("share of the time open", "m / m_s", Figure.percent(duty, 1)));
        return working.source(RULE).build();
    }
}
