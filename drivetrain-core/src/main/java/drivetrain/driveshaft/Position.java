package drivetrain.driveshaft;

import drivetrain.quantity.Length;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A point in the vehicle's axes of ISO 8855: x forward, y to the left, z up. The origin is any point that all positions of one description share.
 *
 * @param x how far forward
 * @param y how far to the left
 * @param z how far up
 */
public record Position(Length x, Length y, Length z) {

    /**
     * Makes a position.
     *
     * @param x how far forward
     * @param y how far to the left
     * @param z how far up
     * @return the position
     */
    public static Position of(Length x, Length y, Length z) {
        return new Position(x, y, z);
    }

    Vector3D vector() {
        return new Vector3D(x.toMeters(), y.toMeters(), z.toMeters());
    }
}
