package drivetrain.fuel;

import drivetrain.quantity.Power;
import drivetrain.quantity.Volume;
import drivetrain.refusal.Refusal;

/**
 * How fast a pump warms the fuel that flows back to the tank: all its electric power stays in the fuel, and the tank gives no heat away.
 *
 * @param electricPower the electric power of the pumps
 * @param fuel the fuel at its temperature
 * @param inTank the fuel in the tank, greater than zero
 */
public record Recirculation(Power electricPower, FlowingFuel fuel, Volume inTank) {

    private static final double SECONDS_PER_HOUR = 3600.0;

    /**
     * Checks the tank.
     *
     * @throws drivetrain.refusal.RefusedException if it is empty
     */
    public Recirculation {
        if (inTank.si() <= 0.0) {
            throw Refusal.of("fuel in the tank", inTank.toString(), "is nothing to warm: the tank is empty")
                    .allowing("more than 0 L")
                    .asException();
        }
    }

    /**
     * Returns how fast the fuel warms.
     *
     * @return kelvins (degC) an hour
     */
    public double kelvinsPerHour() {
        double mass = fuel.density().toKilogramsPerCubicMeter() * inTank.toCubicMeters();
        return electricPower.toWatts() * SECONDS_PER_HOUR / (mass * fuel.fuel().specificHeat());
    }
}
