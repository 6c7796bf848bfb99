package drivetrain.driveshaft;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.util.MathUtils;

/**
 * Where an axle stands against its place at ride height: turned by roll about x, then pitch about y, then yaw about z, and moved. Meters and radians.
 *
 * @param x moved forward
 * @param y moved to the left
 * @param z moved up
 * @param roll left side up
 * @param pitch front edge down
 * @param yaw turned to the left
 * @param misfit how far the bushes must give for the axle to stand there
 */
public record AxlePose(double x, double y, double z, double roll, double pitch, double yaw, double misfit) {

    /** Takes whole turns out of the angles, which a search may end with. */
    public AxlePose {
        pitch = MathUtils.normalizeAngle(pitch, 0.0);
        yaw = MathUtils.normalizeAngle(yaw, 0.0);
    }

    /** Turns a direction with the axle. */
    Vector3D turned(Vector3D direction) {
        double sinRoll = Math.sin(roll);
        double cosRoll = Math.cos(roll);
        double sinPitch = Math.sin(pitch);
        double cosPitch = Math.cos(pitch);
        double sinYaw = Math.sin(yaw);
        double cosYaw = Math.cos(yaw);
        double y1 = cosRoll * direction.getY() - sinRoll * direction.getZ();
        double z1 = sinRoll * direction.getY() + cosRoll * direction.getZ();
        double x2 = cosPitch * direction.getX() + sinPitch * z1;
        double z2 = -sinPitch * direction.getX() + cosPitch * z1;
        return new Vector3D(cosYaw * x2 - sinYaw * y1, sinYaw * x2 + cosYaw * y1, z2);
    }

    /** Moves a point with the axle; the point is given from the middle of the axle at ride height. */
    Vector3D moved(Vector3D point) {
        return turned(point).add(new Vector3D(x, y, z));
    }
}
