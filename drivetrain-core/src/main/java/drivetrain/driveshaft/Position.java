package drivetrain.driveshaft;

import drivetrain.quantity.Length;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A point in the vehicle's axes of ISO 8855: x forward, y to the left, z up. The origin is any point that all positions of one description share.
 *
 * @param x how far forward, within 20 m
 * @param y how far to the left, within 20 m
 * @param z how far up, within 20 m
 */
public record Position(Length x, Length y, Length z) {

    private static final Length FURTHEST = Length.ofMeters(20.0);

    /**
     * Checks the coordinates.
     *
     * @throws drivetrain.refusal.RefusedException if one is more than 20 m
     */
    public Position {
        require("x", x);
        require("y", y);
        require("z", z);
    }

    static Length require(String axis, Length coordinate) {
        return coordinate.requireBetween(axis, FURTHEST.times(-1.0), FURTHEST, Length.METER);
    }

    /**
     * Makes a position.
     *
     * @param x how far forward
     * @param y how far to the left
     * @param z how far up
     * @return the position
     * @throws drivetrain.refusal.RefusedException if a coordinate is more than 20 m
     */
    public static Position of(Length x, Length y, Length z) {
        return new Position(x, y, z);
    }

    Vector3D vector() {
        return new Vector3D(x.toMeters(), y.toMeters(), z.toMeters());
    }
}
