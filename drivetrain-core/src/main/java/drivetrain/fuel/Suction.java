package drivetrain.fuel;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * What stands between the fuel at the pump's inlet and its boiling: pressure of the air in the tank, less the vapor pressure, less the suction lift, less the loss ahead of the pump.
 *
 * @param line the way from the tank to the engine
 * @param fuel the fuel at its temperature
 * @param suctionLift how far the pump's inlet lies above the fuel; below zero for an inlet under the fuel
 * @param air the absolute pressure of the air in the tank, greater than zero
 * @param vapor the absolute vapor pressure of the fuel
 */
public record Suction(FuelLine line, FlowingFuel fuel, Length suctionLift, Pressure air, Pressure vapor) {

    private static final double ACCURACY_FLOW = 1e-12;
    private static final int MOST_EVALUATIONS = 200;

    /**
     * Checks the air.
     *
     * @throws drivetrain.refusal.RefusedException if its pressure is not greater than zero, as where a gauge pressure was given for an absolute one
     */
    public Suction {
        air.requirePositive("absolute air pressure in the tank");
    }

    /**
     * Looks at a fuel that can boil.
     *
     * @param line the way from the tank to the engine
     * @param fuel the fuel at its temperature
     * @param suctionLift how far the pump's inlet lies above the fuel
     * @param air the absolute pressure of the air in the tank
     * @return the suction side; not evaluated for a fuel that hardly evaporates
     */
    public static Outcome<Suction> of(FuelLine line, FlowingFuel fuel, Length suctionLift, Pressure air) {
        return fuel.fuel()
                .vaporPressureAt(fuel.temperature())
                .map(vapor -> new Suction(line, fuel, suctionLift, air, vapor));
    }

    private Pressure liftPressure() {
        return Pressure.ofPascals(
                fuel.density().toKilogramsPerCubicMeter() * FuelSupply.GRAVITY * suctionLift.toMeters());
    }

    /**
     * Returns the margin at a flow.
     *
     * @param flow the flow through the pump
     * @return the pressure at the inlet above the vapor pressure; negative where the fuel boils
     */
    public Pressure margin(VolumeFlow flow) {
        return air.minus(vapor).minus(liftPressure()).minus(line.suctionLoss(flow, fuel));
    }

    /**
     * Returns the flow at which the fuel begins to boil at the inlet.
     *
     * @return the flow, zero if it boils at rest; not evaluated where nothing lies ahead of the pump, so that no flow makes it boil
     */
    public Outcome<VolumeFlow> mostFlow() {
        VolumeFlow none = VolumeFlow.ofCubicMetersPerSecond(0.0);
        if (margin(none).si() <= 0.0) {
            return Outcome.of(none);
        }
        if (line.suction().isEmpty() || margin(PumpPoint.MOST_FLOW).si() > 0.0) {
            return Outcome.notEvaluated("the suction side limits no flow that a pump of this kind moves");
        }
        double flow = new BrentSolver(1e-12, ACCURACY_FLOW)
                .solve(
                        MOST_EVALUATIONS,
                        q -> margin(VolumeFlow.ofCubicMetersPerSecond(q)).si(),
                        0.0,
                        PumpPoint.MOST_FLOW.si());
        return Outcome.of(VolumeFlow.ofCubicMetersPerSecond(flow));
    }

    /**
     * Returns what the margin rests on.
     *
     * @return the assumptions
     */
    public List<Assumption> assumptions() {
        List<Assumption> all = new ArrayList<>();
        all.add(Assumption.of(
                "boiling of the fuel",
                "the tank is vented, and the fuel at the pump's inlet is as hot as the fuel in the lines",
                Source.commonPractice("a vented tank; the hottest fuel decides")));
        return List.copyOf(all);
    }

    /**
     * Explains the margin.
     *
     * @param flow the flow through the pump
     * @return the working
     */
    public Working working(VolumeFlow flow) {
        return Working.of("margin against boiling at the pump's inlet")
                .input(
                        "temperature of the fuel",
                        "t",
                        Figure.of(fuel.temperature(), Display.TEMPERATURE),
                        "fuel system")
                .input("air pressure in the tank, absolute", "p_a", Figure.of(air, Display.GAUGE_PRESSURE), "elevation")
                .input("suction lift", "h_s", Figure.of(suctionLift, Display.DIMENSION), "fuel system")
                .step(
                        "vapor pressure, absolute",
                        "p_v = f(Reid vapor pressure, t)",
                        Figure.of(vapor, Display.GAUGE_PRESSURE))
                .step(
                        "loss ahead of the pump",
                        "sum (f l/d + K) rho v2/2, and filters",
                        Figure.of(line.suctionLoss(flow, fuel), Display.GAUGE_PRESSURE))
                .step("margin", "p_a - p_v - rho g h_s - loss", Figure.of(margin(flow), Display.GAUGE_PRESSURE))
                .source(VaporPressure.SOURCE)
                .build();
    }
}
