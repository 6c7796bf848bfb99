package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * One piece of a line as tape and inclinometer see it.
 *
 * @param length from joint center to joint center, 50 mm to 5 m
 * @param slope the slope of the tube, positive where it falls toward the axle; empty where the fall was measured
 * @param fall by how much the far joint center lies lower; empty where the slope was measured
 * @param left by how much the far joint center lies further to the vehicle's left; empty where it was not measured and is taken as 0
 */
public record SurveyRun(Length length, Optional<Angle> slope, Optional<Length> fall, Optional<Length> left) {

    /**
     * Checks that slope or fall is given and that the length reaches that far.
     *
     * @throws drivetrain.refusal.RefusedException if not
     */
    public SurveyRun {
        ShaftPiece.requireLength(length);
        if (slope.isPresent() == fall.isPresent()) {
            throw Refusal.of("shaft", length.toString(), "needs its slope or its fall, and not both")
                    .allowing("a slope such as 9.2 deg down, or a fall such as 180 mm down")
                    .asException();
        }
        double down = slope.map(angle -> length.toMeters() * Math.sin(angle.toRadians()))
                .orElseGet(() -> fall.map(Length::toMeters).orElse(0.0));
        double across = Math.hypot(down, left.map(Length::toMeters).orElse(0.0));
        boolean steep = slope.isPresent() && Math.abs(slope.get().toRadians()) > Math.toRadians(60.0);
        if (steep || across > 0.9 * length.toMeters()) {
            throw Refusal.of(
                            "shaft",
                            length.toString(),
                            "cannot fall or turn aside that far: is the unit the right one?")
                    .allowing("a slope up to 60 deg; fall and sideward offset well below the length")
                    .asException();
        }
    }

    /**
     * Makes a run that was measured with an inclinometer on the tube.
     *
     * @param length from joint center to joint center
     * @param down the slope of the tube, positive where it falls toward the axle
     * @return the run, without a sideward offset
     * @throws drivetrain.refusal.RefusedException if the slope is too steep
     */
    public static SurveyRun sloping(Length length, Angle down) {
        return new SurveyRun(length, Optional.of(down), Optional.empty(), Optional.empty());
    }

    /**
     * Makes a run that was measured by the heights of its ends.
     *
     * @param length from joint center to joint center
     * @param fall by how much the far end lies lower
     * @return the run, without a sideward offset
     * @throws drivetrain.refusal.RefusedException if the fall is too much for the length
     */
    public static SurveyRun falling(Length length, Length fall) {
        return new SurveyRun(length, Optional.empty(), Optional.of(fall), Optional.empty());
    }

    /**
     * Sets the far end to the side.
     *
     * @param offset by how much it lies further to the vehicle's left
     * @return a copy with that offset
     * @throws drivetrain.refusal.RefusedException if the offset is too much for the length
     */
    public SurveyRun withLeft(Length offset) {
        return new SurveyRun(length, slope, fall, Optional.of(offset));
    }

    /** From the near joint center to the far one: an inclinometer on the tube reads asin(dz / L). */
    Vector3D vector(ShaftPlace place) {
        double total = length.toMeters();
        double down = slope.map(angle -> total * Math.sin(angle.toRadians()))
                .orElseGet(() -> fall.map(Length::toMeters).orElse(0.0));
        double aside = left.map(Length::toMeters).orElse(0.0);
        double along = Math.sqrt(total * total - down * down - aside * aside);
        return new Vector3D(place.forward() * along, aside, -down);
    }
}
