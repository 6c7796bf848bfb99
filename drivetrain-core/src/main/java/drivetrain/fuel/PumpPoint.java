package drivetrain.fuel;

import drivetrain.quantity.Current;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.VolumeFlow;
import java.util.Optional;

/**
 * One measured point of a pump.
 *
 * @param pressure the pressure that the pump adds, 0 to 20 bar
 * @param flow the flow, 0 to 2000 L/h
 * @param current the current that the pump draws, up to 100 A, where it was measured
 */
public record PumpPoint(Pressure pressure, VolumeFlow flow, Optional<Current> current) {

    static final Pressure NO_PRESSURE = Pressure.ofPascals(0.0);
    static final VolumeFlow NO_FLOW = VolumeFlow.ofCubicMetersPerSecond(0.0);
    static final Pressure MOST_PRESSURE = Pressure.ofBar(20.0);
    static final VolumeFlow MOST_FLOW = VolumeFlow.ofLitersPerHour(2000.0);
    static final Current MOST_CURRENT = Current.ofAmperes(100.0);

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public PumpPoint {
        pressure.requireBetween("pump pressure", NO_PRESSURE, MOST_PRESSURE, Pressure.BAR);
        flow.requireBetween("pump flow", NO_FLOW, MOST_FLOW, VolumeFlow.LITER_PER_HOUR);
        current.ifPresent(amperes ->
                amperes.requireBetween("pump current", Current.ofAmperes(0.01), MOST_CURRENT, Current.AMPERE));
    }
}
