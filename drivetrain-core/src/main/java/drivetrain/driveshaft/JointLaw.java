package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularAcceleration;
import drivetrain.quantity.AngularSpeed;
import drivetrain.refusal.Refusal;

/**
 * How one single joint turns the driven shaft while the driving shaft turns evenly.
 *
 * <p>With a1 the angle of the driving yoke's ears from the normal of the joint plane: tan a2 = cos b tan a1, hence the speed ratio cos b / (1 - sin2 b sin2
 * a1), which lies between cos b and 1 / cos b, and the acceleration w2 cos b sin2 b sin 2a1 / (1 - sin2 b sin2 a1)2.
 */
public final class JointLaw {

    private static final double LARGEST = Math.toRadians(89.0);

    private final double cos;
    private final double sinSquared;

    private JointLaw(double angle) {
        cos = Math.cos(angle);
        double sin = Math.sin(angle);
        sinSquared = sin * sin;
    }

    /**
     * Makes the law of a joint.
     *
     * @param angle the operating angle, 0 to 89 degrees
     * @return the law
     * @throws drivetrain.refusal.RefusedException if the angle is out of range
     */
    public static JointLaw at(Angle angle) {
        double radians = angle.toRadians();
        if (!(radians >= 0.0 && radians <= LARGEST)) {
            throw Refusal.of("joint angle", angle.toDegrees() + " deg", "is out of range")
                    .allowing("0 to 89 deg")
                    .asException();
        }
        return new JointLaw(radians);
    }

    static JointLaw ofRadians(double angle) {
        return new JointLaw(angle);
    }

    /** The angle of the driven side, continuous in the angle of the driving side. */
    double driven(double driving) {
        double sin = Math.sin(driving);
        double cosine = Math.cos(driving);
        return driving + Math.atan2((cos - 1.0) * sin * cosine, cosine * cosine + cos * sin * sin);
    }

    /** Speed of the driven side over speed of the driving side. */
    double ratio(double driving) {
        double sin = Math.sin(driving);
        return cos / (1.0 - sinSquared * sin * sin);
    }

    /** How that ratio changes with the angle of the driving side. */
    double ratioSlope(double driving) {
        double sin = Math.sin(driving);
        double divisor = 1.0 - sinSquared * sin * sin;
        return cos * sinSquared * Math.sin(2.0 * driving) / (divisor * divisor);
    }

    /**
     * Returns the angle of the driven shaft.
     *
     * @param driving the angle of the driving yoke's ears from the normal of the joint plane
     * @return the angle of the driven shaft, equal to it at every quarter turn
     */
    public Angle drivenAngle(Angle driving) {
        return Angle.ofRadians(driven(driving.toRadians()));
    }

    /**
     * Returns the ratio of the speeds at an angle of turn.
     *
     * @param driving the angle of the driving yoke's ears from the normal of the joint plane
     * @return driven speed over driving speed
     */
    public double speedRatio(Angle driving) {
        return ratio(driving.toRadians());
    }

    /**
     * Returns the least ratio of the speeds.
     *
     * @return cos b
     */
    public double leastRatio() {
        return cos;
    }

    /**
     * Returns the greatest ratio of the speeds.
     *
     * @return 1 / cos b
     */
    public double greatestRatio() {
        return 1.0 / cos;
    }

    /**
     * Returns how far the speed of the driven shaft swings, from lowest to highest.
     *
     * @return 1 / cos b - cos b, as a fraction of the driving speed
     */
    public double fluctuation() {
        return sinSquared / cos;
    }

    /**
     * Returns the angle of turn at which the acceleration is greatest. It is more than 45 degrees, and only near 45 where the joint bends little.
     *
     * @return the angle of the driving yoke's ears from the normal of the joint plane
     */
    public Angle peakAt() {
        return Angle.ofRadians(peak());
    }

    /** From d/da of sin 2a / (A + B cos 2a)^2 = 0 with A = 1 - s/2, B = s/2, s = sin2 b: B x^2 - A x - 2 B = 0 for x = cos 2a. */
    private double peak() {
        double even = 1.0 - sinSquared / 2.0;
        double swing = sinSquared / 2.0;
        double cosine = -4.0 * swing / (even + Math.sqrt(even * even + 8.0 * swing * swing));
        return Math.acos(cosine) / 2.0;
    }

    /**
     * Returns the greatest angular acceleration of the driven shaft.
     *
     * @param driving the even speed of the driving shaft
     * @return the acceleration, without the small-angle approximation w2 b2, which is 6.9 % low at 30 degrees
     */
    public AngularAcceleration peakAcceleration(AngularSpeed driving) {
        double speed = driving.toRadiansPerSecond();
        return AngularAcceleration.ofRadiansPerSecondSquared(speed * speed * ratioSlope(peak()));
    }
}
