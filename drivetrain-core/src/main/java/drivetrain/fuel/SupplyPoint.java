package drivetrain.fuel;

import drivetrain.quantity.Current;
import drivetrain.quantity.Power;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import java.util.Optional;

/**
 * A fuel supply at work.
 *
 * @param flow the flow through the pump
 * @param lineFlow the flow through the feed line
 * @param added the pressure that the pump adds
 * @param rail the pressure in the rail above the air outside
 * @param feedLoss what the feed line costs
 * @param suctionLoss what the line ahead of the pump costs
 * @param liftPressure what the lift costs
 * @param voltage the voltage at the pump
 * @param current the current of all pumps, where it was measured
 */
public record SupplyPoint(
        VolumeFlow flow,
        VolumeFlow lineFlow,
        Pressure added,
        Pressure rail,
        Pressure feedLoss,
        Pressure suctionLoss,
        Pressure liftPressure,
        Voltage voltage,
        Optional<Current> current) {

    /**
     * Returns the electric power that all pumps take, all of which warms the fuel in the end.
     *
     * @return voltage times current, where the current was measured
     */
    public Optional<Power> electricPower() {
        return current.map(amperes -> Power.ofWatts(amperes.toAmperes() * voltage.toVolts()));
    }
}
