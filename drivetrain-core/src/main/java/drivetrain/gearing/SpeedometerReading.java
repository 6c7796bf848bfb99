package drivetrain.gearing;

import drivetrain.quantity.Speed;

/**
 * What a speedometer shows at a true speed.
 *
 * @param actual the true road speed
 * @param shown the speed shown
 */
public record SpeedometerReading(Speed actual, Speed shown) {

    /**
     * Returns what is shown too much.
     *
     * @return shown - true; negative where too little is shown
     */
    public Speed error() {
        return shown.minus(actual);
    }

    /**
     * Returns what is shown too much as a fraction of the true speed.
     *
     * @return (shown - true) / true; negative where too little is shown
     */
    public double errorFraction() {
        return error().ratioTo(actual);
    }
}
