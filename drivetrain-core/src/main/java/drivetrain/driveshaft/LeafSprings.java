package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Leaf springs with a fixed eye at one end and a shackle at the other. The half of a spring at the fixed eye bends into an arc of a circle, so that the axle comes nearer to
 * the eye by 2 d2 / 3 s, with d the height of the axle over the eye and s the length of that half: as if on a link of three quarters of it.
 *
 * @param eyes the fixed eyes; y is their distance apart
 * @param turn how far the pinion turns up for each 100 mm of bump, up to 6 degrees, where it was measured
 * @param travel how far the axle moves
 */
public record LeafSprings(Position eyes, Optional<Angle> turn, AxleTravel travel) implements Suspension {

    private static final Source ARC = Source.derived("a leaf spring of even strength bends into an arc of a circle");
    private static final Assumption LINK = Assumption.of(
            "path of the axle", "the axle moves as the half springs at the fixed eyes bend, each into an arc", ARC);
    private static final Assumption LEVEL = Assumption.flagged(
            "turn of the pinion on its springs",
            "the pinion is taken to keep its slope over the travel, and not to climb under torque; measure it at full droop and give it, such as turning 1.5 deg up per 100 mm",
            Source.commonPractice("springs with a shackle of usual length turn the axle little"));
    private static final Angle MOST_TURN = Angle.ofDegrees(6.0);
    private static final double TURN_OVER = 0.1;

    /**
     * Checks the eyes.
     *
     * @throws drivetrain.refusal.RefusedException if they lie too far off or over the axle, or if the pinion turns by more than that
     */
    public LeafSprings {
        SuspensionPoint.requireApart("leaf springs", eyes);
        PanhardRod.requireLength("leaf springs", eyes.x());
        turn.ifPresent(angle -> angle.requireBetween(
                "turn of the pinion for each 100 mm", MOST_TURN.times(-1.0), MOST_TURN, Angle.DEGREE));
    }

    @Override
    public AxlePose pose(double heave, double roll) {
        double half = eyes.y().toMeters() / 2.0;
        double left = forward(heave + half * Math.sin(roll));
        double right = forward(heave - half * Math.sin(roll));
        double yaw = half > 0.0 ? Math.atan((right - left) / (2.0 * half)) : 0.0;
        double ahead = travel.pinion().x().toMeters() >= 0.0 ? 1.0 : -1.0;
        double pitch = -ahead * turn.map(Angle::toRadians).orElse(0.0) * heave / TURN_OVER;
        return new AxlePose((left + right) / 2.0, 0.0, heave, roll, pitch, yaw, 0.0);
    }

    /** How far a spring's seat moves forward when it is raised. */
    private double forward(double raised) {
        double reach = Math.abs(eyes.x().toMeters());
        double height = -eyes.z().toMeters();
        double length = (reach + Math.sqrt(reach * reach + 8.0 / 3.0 * height * height)) / 2.0;
        double nearer = 2.0 / 3.0 * ((height + raised) * (height + raised) - height * height) / length;
        return Math.signum(eyes.x().toMeters()) * nearer;
    }

    @Override
    public List<Assumption> assumptions() {
        List<Assumption> all = new ArrayList<>(List.of(LINK));
        if (turn.isEmpty()) {
            all.add(LEVEL);
        }
        return all;
    }

    @Override
    public String text() {
        return SuspensionText.write(this);
    }
}
