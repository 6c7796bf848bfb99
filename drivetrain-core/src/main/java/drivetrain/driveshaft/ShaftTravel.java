package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A shaft over the whole travel of its axle: every height of the left wheel with every height of the right one, between droop and bump.
 *
 * @param installed the shaft in its line at ride height
 * @param suspension what guides the axle
 * @param ride the shaft at ride height
 * @param longest where it is longest
 * @param shortest where it is shortest
 * @param widest for each joint where it bends most
 * @param worst where the equivalent residual angle is greatest
 * @param misfit how far the bushes of the suspension must give, at the most
 * @param positions how many places were looked at
 */
public record ShaftTravel(
        InstalledShaft installed,
        Suspension suspension,
        TravelPoint ride,
        TravelPoint longest,
        TravelPoint shortest,
        List<TravelPoint> widest,
        TravelPoint worst,
        Length misfit,
        int positions) {

    /** Heights of each wheel that are looked at. */
    private static final int HEIGHTS = 17;

    private static final Source RULE = Source.derived(
            "the axle as a rigid body on its suspension; the pinion's joint center and axis carried along");

    /** Copies the list. */
    public ShaftTravel {
        widest = List.copyOf(widest);
    }

    /**
     * Sweeps the travel.
     *
     * @param installed the shaft in its line at ride height
     * @param suspension what guides the axle
     * @return the extremes; the length is within 0.1 mm of the extreme one for arms and links of 400 mm and travel of 250 mm
     * @throws drivetrain.refusal.RefusedException if the suspension cannot follow its travel
     */
    public static ShaftTravel of(InstalledShaft installed, Suspension suspension) {
        return of(installed, suspension, HEIGHTS);
    }

    /**
     * Sweeps the travel in steps of one's own.
     *
     * @param installed the shaft in its line at ride height
     * @param suspension what guides the axle
     * @param heights how many heights of each wheel to look at, 2 to 1000
     * @return the extremes
     * @throws drivetrain.refusal.RefusedException if the suspension cannot follow its travel, or if the count is out of range
     */
    public static ShaftTravel of(InstalledShaft installed, Suspension suspension, int heights) {
        if (heights < 2 || heights > 1000) {
            throw Refusal.of("heights", Integer.toString(heights), "is out of range")
                    .allowing("2 to 1000")
                    .asException();
        }
        Sweep sweep = new Sweep(installed, suspension);
        for (int i = 0; i < heights; i++) {
            for (int j = 0; j < heights; j++) {
                sweep.visit(sweep.height(i, heights), sweep.height(j, heights));
            }
        }
        return sweep.result();
    }

    /**
     * Raises both wheels together.
     *
     * @param heights how many heights to look at, at least 2
     * @return the shaft from full droop to full bump
     */
    public List<TravelPoint> together(int heights) {
        Sweep sweep = new Sweep(installed, suspension);
        List<TravelPoint> points = new ArrayList<>();
        for (int i = 0; i < heights; i++) {
            double height = sweep.height(i, heights);
            points.add(sweep.point(height, height));
        }
        return points;
    }

    /**
     * Looks at one place.
     *
     * @param left how far the left wheel is raised
     * @param right how far the right wheel is raised
     * @return the shaft there
     */
    public TravelPoint at(Length left, Length right) {
        return new Sweep(installed, suspension).point(left.toMeters(), right.toMeters());
    }

    /**
     * Returns by how much the shaft must change its length.
     *
     * @return longest less shortest
     */
    public Length plunge() {
        return longest.length().minus(shortest.length());
    }

    /**
     * Returns the engagement that is left where the shaft is longest.
     *
     * @return the length, negative if the spline has come apart; empty if the engagement at ride height is not given
     */
    public Optional<Length> engagementLeft() {
        return installed
                .shaft()
                .slip()
                .flatMap(SlipSpline::engaged)
                .map(engaged -> engaged.minus(longest.length().minus(ride.length())));
    }

    /**
     * Returns how far the shaft could be pushed together where it is shortest.
     *
     * @return the length, negative if it has bottomed; empty if the free travel at ride height is not given
     */
    public Optional<Length> freeLeft() {
        return installed
                .shaft()
                .slip()
                .flatMap(SlipSpline::free)
                .map(free -> free.minus(ride.length().minus(shortest.length())));
    }

    /**
     * Returns what is taken for granted about the suspension.
     *
     * @return the assumptions
     */
    public List<Assumption> assumptions() {
        return suspension.assumptions();
    }

    /**
     * Works the extremes out in the open.
     *
     * @return the working
     */
    public Working working() {
        Working.Builder working = Working.of(
                        "travel of the " + installed.place().label() + " shaft")
                .input("bump", "", figure(suspension.travel().bump()), "suspension")
                .input("droop", "", figure(suspension.travel().droop()), "suspension")
                .input("track", "", figure(suspension.travel().track()), "suspension")
                .input("positions looked at", "", Figure.plain(positions, 0), "left by right wheel")
                .step("length at ride height", "L0 = |pinion joint - joint before it|", figure(ride.length()))
                .step("longest over the travel", "L_max", figure(longest.length()))
                .step("shortest over the travel", "L_min", figure(shortest.length()))
                .step("plunge", "L_max - L_min", figure(plunge()));
        for (int i = 0; i < widest.size(); i++) {
            working.step(
                    "widest angle of joint " + (i + 1),
                    "atan2(|u x v|, u . v)",
                    Figure.of(widest.get(i).angles().get(i), Display.JOINT_ANGLE));
        }
        engagementLeft()
                .ifPresent(left ->
                        working.step("spline engagement left", "engaged at ride height - (L_max - L0)", figure(left)));
        freeLeft()
                .ifPresent(
                        left -> working.step("slip travel left", "free at ride height - (L0 - L_min)", figure(left)));
        return working.step("give of the bushes, at the most", "", figure(misfit))
                .source(RULE)
                .build();
    }

    private static Figure figure(Length length) {
        return Figure.of(length, Display.DIMENSION);
    }

    /** One walk over the travel. */
    private static final class Sweep {

        private final InstalledShaft installed;
        private final Suspension suspension;
        private final AxleWalk walk;
        private final AxleTravel travel;
        private final Vector3D pinion;
        private final Vector3D center;
        private final Vector3D axis;
        private final int joints;
        private final double[] greatest;
        private final double[][] greatestAt;
        private double misfit;
        private int positions;

        Sweep(InstalledShaft installed, Suspension suspension) {
            this.installed = installed;
            this.suspension = suspension;
            this.walk = suspension.walk();
            this.travel = suspension.travel();
            this.pinion = travel.pinion().vector();
            this.center = installed.line().pinionCenter();
            this.axis = installed.line().pinionAxis();
            this.joints = installed.line().jointCount();
            this.greatest = new double[joints + 3];
            this.greatestAt = new double[joints + 3][2];
            java.util.Arrays.fill(greatest, Double.NEGATIVE_INFINITY);
        }

        double height(int index, int heights) {
            double low = -travel.droop().toMeters();
            double high = travel.bump().toMeters();
            return low + (high - low) * index / (heights - 1);
        }

        private InstalledShaft moved(AxlePose pose) {
            Vector3D joint = center.add(pose.moved(pinion)).subtract(pinion);
            return new InstalledShaft(
                    installed.place(), installed.shaft(), installed.line().withPinion(joint, pose.turned(axis)));
        }

        private AxlePose pose(double left, double right) {
            return walk.pose(travel.heave(left, right), travel.roll(left, right));
        }

        void visit(double left, double right) {
            AxlePose pose = pose(left, right);
            InstalledShaft there = moved(pose);
            double length = there.line().span(joints - 2);
            for (int i = 0; i < joints; i++) {
                keep(i, there.line().bend(i), left, right);
            }
            keep(joints, length, left, right);
            keep(joints + 1, -length, left, right);
            keep(joints + 2, there.residual().radians(), left, right);
            misfit = Math.max(misfit, pose.misfit());
            positions++;
        }

        private void keep(int what, double value, double left, double right) {
            if (value > greatest[what]) {
                greatest[what] = value;
                greatestAt[what][0] = left;
                greatestAt[what][1] = right;
            }
        }

        TravelPoint point(double left, double right) {
            InstalledShaft there = moved(pose(left, right));
            List<Angle> angles = new ArrayList<>();
            for (int i = 0; i < joints; i++) {
                angles.add(there.line().angle(i));
            }
            return new TravelPoint(
                    Length.ofMeters(left),
                    Length.ofMeters(right),
                    there.line().length(joints - 2),
                    angles,
                    there.residual().equivalentAngle());
        }

        private TravelPoint kept(int what) {
            return point(greatestAt[what][0], greatestAt[what][1]);
        }

        ShaftTravel result() {
            List<TravelPoint> widest = new ArrayList<>();
            for (int i = 0; i < joints; i++) {
                widest.add(kept(i));
            }
            return new ShaftTravel(
                    installed,
                    suspension,
                    point(0.0, 0.0),
                    kept(joints),
                    kept(joints + 1),
                    widest,
                    kept(joints + 2),
                    Length.ofMeters(misfit),
                    positions);
        }
    }
}
