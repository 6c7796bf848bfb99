package drivetrain.fuel;

import drivetrain.quantity.Pressure;

/**
 * The pressures over which a pump was measured.
 *
 * @param lowest the lowest
 * @param highest the highest
 * @param endsAtNoFlow true if the pump gives nothing at the highest pressure and hence nothing above
 */
public record PressureBand(Pressure lowest, Pressure highest, boolean endsAtNoFlow) {}
