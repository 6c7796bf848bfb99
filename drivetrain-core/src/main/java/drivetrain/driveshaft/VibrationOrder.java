package drivetrain.driveshaft;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Frequency;

/**
 * A vibration that a turning part makes.
 *
 * @param part the part, such as {@code rear driveshaft}
 * @param cause what in it shakes, such as {@code unbalance, bent tube}
 * @param turning the speed of the part
 * @param order how often a turn it shakes
 */
public record VibrationOrder(String part, String cause, AngularSpeed turning, double order) {

    /**
     * Returns the frequency.
     *
     * @return turns in a time, times the order
     */
    public Frequency frequency() {
        return turning.toFrequency().times(order);
    }
}
