package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import drivetrain.quantity.Torque;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A driveshaft in its line.
 *
 * @param place which axle it runs to
 * @param shaft the shaft
 * @param line the line that it runs in
 */
public record InstalledShaft(ShaftPlace place, Driveshaft shaft, ShaftLine line) {

    private static final Assumption IN_PHASE = Assumption.flagged(
            "phase of the yokes",
            "the yokes of a piece whose phase is not given are taken as in phase; look along the tube, and say how far they are turned where they are not",
            Source.commonPractice("shafts are welded with their yokes in phase unless the line is a compound one"));
    private static final Assumption EVEN_DOUBLE = Assumption.flagged(
            "double joint",
            "the double joint is taken as turning evenly; one that is worn, or bends far, does not quite",
            Source.derived("two single joints that halve the angle, joint planes in one plane"));

    /**
     * Checks that shaft and line have the same joints.
     *
     * @throws drivetrain.refusal.RefusedException if not
     */
    public InstalledShaft {
        if (shaft.joints().size() != line.jointCount()) {
            throw Refusal.of(
                            place.label() + " shaft line",
                            "",
                            "has " + line.jointCount() + " joints where the shaft has "
                                    + shaft.joints().size())
                    .allowing("one shaft for each tube, with a center bearing between two")
                    .asException();
        }
    }

    /**
     * Returns the angle of a joint that counts for its evenness.
     *
     * @param joint the joint, 0 for the one at the transfer case
     * @return the operating angle, or 0 for a double joint
     */
    double unevenAngle(int joint) {
        return shaft.joints().get(joint).isDouble() ? 0.0 : line.bend(joint);
    }

    /** The phase of a piece's yokes in radians, in phase where it is not given. */
    double phase(int piece) {
        return shaft.pieces().get(piece).phase().map(Angle::toRadians).orElse(0.0);
    }

    /** The phase of a piece's yokes against the turn of the joint planes: 0 if its joints cancel as well as their angles let them. */
    double mismatch(int piece) {
        return phase(piece) - line.turn(piece);
    }

    /**
     * Returns the equivalent residual angle of the line: that of the single joint which would shake the driven end as the line does.
     *
     * @return the residual
     */
    public Residual residual() {
        return Residual.of(this);
    }

    /**
     * Returns how the line moves at a speed.
     *
     * @param speed the speed of the shaft, greater than zero
     * @return the accelerations
     * @throws drivetrain.refusal.RefusedException if the speed is not greater than zero
     */
    public LineMotion motionAt(AngularSpeed speed) {
        return LineMotion.of(this, speed);
    }

    /**
     * Returns whether all axes lie in one plane.
     *
     * @return true if no joint plane is turned against that of the joint before it so far that the joint's axis leaves the plane by a quarter of a degree
     */
    public boolean isInOnePlane() {
        for (int piece = 0; piece < shaft.pieces().size(); piece++) {
            double aside = Math.abs(Math.sin(line.turn(piece)));
            if (aside * Math.min(line.bend(piece), line.bend(piece + 1)) > ShaftLimit.onePlane()) {
                return false;
            }
        }
        return true;
    }

    /**
     * Returns the lengths of the pieces from joint to joint, as the line has them.
     *
     * @return the lengths, the piece at the transfer case first
     */
    public List<Length> lengths() {
        List<Length> lengths = new ArrayList<>();
        for (int i = 0; i < shaft.pieces().size(); i++) {
            lengths.add(line.length(i));
        }
        return lengths;
    }

    /**
     * Returns the torque that all joints and flanges may carry.
     *
     * @return the least of the ratings that are given, or empty if none is
     */
    public Optional<Torque> rating() {
        return Stream.concat(
                        shaft.joints().stream().flatMap(joint -> joint.rating().stream()),
                        shaft.flangeRating().stream())
                .min(Comparator.naturalOrder());
    }

    /**
     * Returns the couples with which the joints bend their shafts under a torque.
     *
     * @param torque the torque of the shaft, greater than zero
     * @return the couples of each joint, the one at the transfer case first, with the transfer case driving
     * @throws drivetrain.refusal.RefusedException if the torque is not greater than zero
     */
    public List<SecondaryCouple> couples(Torque torque) {
        List<SecondaryCouple> couples = new ArrayList<>();
        for (int i = 0; i < line.jointCount(); i++) {
            couples.add(
                    shaft.joints().get(i).isDouble()
                            ? SecondaryCouple.ofDouble(torque, line.angle(i))
                            : SecondaryCouple.of(torque, line.angle(i)));
        }
        return couples;
    }

    /**
     * Works the couples of the joints out.
     *
     * @param torque the torque of the shaft, greater than zero
     * @return inputs, formulas and results of each joint
     * @throws drivetrain.refusal.RefusedException if the torque is not greater than zero
     */
    public Working couplesWorking(Torque torque) {
        Working.Builder working = Working.of("secondary couples of the " + place.label() + " shaft");
        List<SecondaryCouple> couples = couples(torque);
        for (int i = 0; i < couples.size(); i++) {
            working.from(couples.get(i).working(place.label() + " joint " + (i + 1), torque, line.angle(i)));
        }
        return working.build();
    }

    /**
     * Tells which joint bends further than its maker allows; a shaft with one cannot be answered for in motion.
     *
     * @return a phrase that names the joint with both angles, or empty if every joint is within its rating
     */
    public Optional<String> overbent() {
        for (int i = 0; i < line.jointCount(); i++) {
            Optional<Angle> most = shaft.joints().get(i).mostAngle();
            Angle bend = line.angle(i);
            if (most.isPresent() && bend.isGreaterThan(most.get())) {
                return Optional.of(
                        "joint " + (i + 1) + " of the " + place.label() + " shaft bends " + bend.format(Angle.DEGREE, 1)
                                + " and its maker allows " + most.get().format(Angle.DEGREE, 1));
            }
        }
        return Optional.empty();
    }

    /**
     * Works the equivalent residual angle out in the open.
     *
     * @return the angles of the joints, the turns of their planes, the phases of the yokes, and what they make together
     */
    public Working residualWorking() {
        return Residual.working(this);
    }

    /**
     * Returns what is taken for granted about the shaft.
     *
     * @return the assumptions
     */
    public List<Assumption> assumptions() {
        List<Assumption> all = new ArrayList<>();
        if (shaft.pieces().stream().anyMatch(piece -> piece.phase().isEmpty())) {
            all.add(IN_PHASE);
        }
        if (shaft.joints().stream().anyMatch(Joint::isDouble)) {
            all.add(EVEN_DOUBLE);
        }
        return all;
    }
}
