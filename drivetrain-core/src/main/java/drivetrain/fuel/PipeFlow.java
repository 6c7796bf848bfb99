package drivetrain.fuel;

import drivetrain.finding.Source;
import drivetrain.quantity.Density;
import drivetrain.quantity.KinematicViscosity;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Speed;
import drivetrain.quantity.VolumeFlow;

/**
 * Friction of a steady flow in a round bore: Darcy and Weisbach, with 64/Re for laminar flow up to Re 2300 and Colebrook and White from Re 4000 on. In the gap, where neither
 * holds, the friction factor is taken on the straight line between the two, so that the loss rises steadily; {@link #isUncertain} tells of it.
 */
public final class PipeFlow {

    /** Where laminar flow ends. */
    static final double LAMINAR_END = 2300.0;

    /** Where turbulent flow is established. */
    static final double TURBULENT_START = 4000.0;

    /** Where the formulas come from. */
    public static final Source SOURCE = Source.handbook(
            "White, Fluid Mechanics, ch. 6: Darcy-Weisbach; laminar 64/Re; Colebrook-White for turbulent flow");

    private static final int MOST_STEPS = 60;
    private static final double ACCURACY = 1e-14;

    private PipeFlow() {}

    /**
     * Returns the mean speed of a flow.
     *
     * @param flow the flow
     * @param bore the bore, greater than zero
     * @return flow / area
     */
    public static Speed speed(VolumeFlow flow, Length bore) {
        return Speed.ofMetersPerSecond(
                flow.toCubicMetersPerSecond() / (Math.PI / 4.0 * bore.toMeters() * bore.toMeters()));
    }

    /**
     * Returns the Reynolds number.
     *
     * @param speed the mean speed
     * @param bore the bore
     * @param viscosity the kinematic viscosity
     * @return v d / nu
     */
    public static double reynolds(Speed speed, Length bore, KinematicViscosity viscosity) {
        return speed.toMetersPerSecond() * bore.toMeters() / viscosity.toSquareMetersPerSecond();
    }

    /**
     * Tells whether the flow is neither surely laminar nor surely turbulent.
     *
     * @param reynolds the Reynolds number
     * @return true between 2300 and 4000
     */
    public static boolean isUncertain(double reynolds) {
        return reynolds > LAMINAR_END && reynolds < TURBULENT_START;
    }

    /**
     * Returns the Darcy friction factor.
     *
     * @param reynolds the Reynolds number, greater than zero
     * @param relativeRoughness roughness / bore, 0 to 0.05
     * @return the friction factor
     */
    public static double frictionFactor(double reynolds, double relativeRoughness) {
        if (reynolds <= LAMINAR_END) {
            return 64.0 / reynolds;
        }
        if (reynolds >= TURBULENT_START) {
            return colebrook(reynolds, relativeRoughness);
        }
        double share = (reynolds - LAMINAR_END) / (TURBULENT_START - LAMINAR_END);
        return (1.0 - share) * 64.0 / LAMINAR_END + share * colebrook(TURBULENT_START, relativeRoughness);
    }

    /** Solves x = -2 log10(e/3.7 + 2.51 x/Re) for x = 1/sqrt(f) by Newton's method from Haaland's explicit value. */
    static double colebrook(double reynolds, double relativeRoughness) {
        double rough = relativeRoughness / 3.7;
        double slope = 2.51 / reynolds;
        double x = 1.0 / Math.sqrt(haaland(reynolds, relativeRoughness));
        for (int i = 0; i < MOST_STEPS; i++) {
            double inside = rough + slope * x;
            double f = x + 2.0 * Math.log10(inside);
            double df = 1.0 + 2.0 * slope / (inside * Math.log(10.0));
            double step = f / df;
            x -= step;
            if (Math.abs(step) <= ACCURACY * x) {
                break;
            }
        }
        return 1.0 / (x * x);
    }

    /** Haaland's explicit formula, within 2 % of Colebrook's; White, Fluid Mechanics, eq. 6.49. */
    static double haaland(double reynolds, double relativeRoughness) {
        double x = -1.8 * Math.log10(Math.pow(relativeRoughness / 3.7, 1.11) + 6.9 / reynolds);
        return 1.0 / (x * x);
    }

    /**
     * Returns the pressure that friction costs.
     *
     * @param flow the flow, zero or more
     * @param bore the bore
     * @param length the length
     * @param roughness the roughness of the wall
     * @param density the density
     * @param viscosity the kinematic viscosity
     * @return f (l/d) rho v2/2
     */
    public static Pressure friction(
            VolumeFlow flow,
            Length bore,
            Length length,
            Length roughness,
            Density density,
            KinematicViscosity viscosity) {
        if (flow.si() <= 0.0) {
            return Pressure.ofPascals(0.0);
        }
        Speed speed = speed(flow, bore);
        double factor = frictionFactor(reynolds(speed, bore, viscosity), roughness.ratioTo(bore));
        return dynamic(speed, density).times(factor * length.ratioTo(bore));
    }

    static Pressure dynamic(Speed speed, Density density) {
        double v = speed.toMetersPerSecond();
        return Pressure.ofPascals(density.toKilogramsPerCubicMeter() * v * v / 2.0);
    }
}
