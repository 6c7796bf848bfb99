package drivetrain.driveshaft;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Frequency;
import drivetrain.quantity.Length;
import java.util.List;

/**
 * One way in which a shaft bends freely.
 *
 * @param frequency its natural frequency
 * @param mountShare how much of its energy is in the springs that carry the shaft, 0 to 1; above one half it is the shaft that bounces on its mounts
 *     rather than one that bends
 * @param shape how far it moves across along its length, the greatest being 1 or -1 and the first of note positive
 */
public record BeamMode(Frequency frequency, double mountShare, List<Point> shape) {

    /** Copies the list. */
    public BeamMode {
        shape = List.copyOf(shape);
    }

    /**
     * Tells whether the shaft itself bends.
     *
     * @return false if most of the energy is in the springs that carry it
     */
    public boolean isBending() {
        return mountShare < 0.5;
    }

    /**
     * Returns the speed at which the shaft turns as often as it swings.
     *
     * @return the whirling speed
     */
    public AngularSpeed speed() {
        return frequency.toAngularSpeed();
    }

    /**
     * One point of the shape.
     *
     * @param place the distance from the first joint center
     * @param deflection how far it moves, -1 to 1
     */
    public record Point(Length place, double deflection) {}
}
