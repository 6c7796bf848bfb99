package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import java.util.Optional;

/**
 * The sliding spline that lets a shaft change its length.
 *
 * @param teeth the count of teeth, 4 to 120
 * @param diameter the diameter of the stub, where known
 * @param stub the length of the stub outside the tube, where known
 * @param engaged the length over which stub and sleeve engage at ride height, where known
 * @param least the engagement that must be left at the longest, where known
 * @param free how far the shaft can still be pushed together at ride height before it bottoms, where known
 */
public record SlipSpline(
        int teeth,
        Optional<Length> diameter,
        Optional<Length> stub,
        Optional<Length> engaged,
        Optional<Length> least,
        Optional<Length> free) {

    static final int FEWEST_TEETH = 4;
    static final int MOST_TEETH = 120;

    /**
     * Checks the figures.
     *
     * @throws drivetrain.refusal.RefusedException if one is out of range
     */
    public SlipSpline {
        if (teeth < FEWEST_TEETH || teeth > MOST_TEETH) {
            throw Refusal.of("spline teeth", Integer.toString(teeth), "is out of range")
                    .allowing(FEWEST_TEETH + " to " + MOST_TEETH)
                    .asException();
        }
        require("stub diameter", diameter, 8.0, 200.0);
        require("stub length", stub, 10.0, 1000.0);
        require("spline engagement", engaged, 1.0, 500.0);
        require("least spline engagement", least, 1.0, 500.0);
        require("free slip travel", free, 0.0, 500.0);
    }

    private static void require(String subject, Optional<Length> length, double least, double most) {
        length.ifPresent(given -> given.requireBetween(
                subject, Length.ofMillimeters(least), Length.ofMillimeters(most), Length.MILLIMETER));
    }

    /**
     * Makes a spline of which only the teeth are known.
     *
     * @param teeth the count of teeth
     * @return the spline
     * @throws drivetrain.refusal.RefusedException if the count is out of range
     */
    public static SlipSpline of(int teeth) {
        return new SlipSpline(
                teeth, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * Returns the turn from one tooth to the next.
     *
     * @return one turn divided by the teeth
     */
    public Angle pitch() {
        return Angle.ofRadians(2.0 * Math.PI / teeth);
    }
}
