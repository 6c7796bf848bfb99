package drivetrain.document;

import drivetrain.assessment.CriticalSpeedAnswer;
import drivetrain.assessment.ShaftAnswer;
import drivetrain.assessment.ShaftsAnswer;
import drivetrain.assessment.StrengthAnswer;
import drivetrain.assessment.TravelAnswer;
import drivetrain.driveshaft.CriticalSpeed;
import drivetrain.driveshaft.InstalledShaft;
import drivetrain.driveshaft.ShaftTravel;
import drivetrain.driveshaft.TravelPoint;
import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularAcceleration;
import drivetrain.quantity.Display;
import java.util.ArrayList;
import java.util.List;

/** Writes the figures of the answers about driveshafts. */
final class ShaftTree {

    private ShaftTree() {}

    static void shafts(FigureTree tree, ShaftsAnswer answer) {
        tree.withList("shafts", answer.shafts(), ShaftTree::shaft).with("missing", answer.missing());
    }

    private static void shaft(FigureTree tree, ShaftAnswer answer) {
        InstalledShaft installed = answer.installed();
        tree.with("place", installed.place().label())
                .withList("joints", angles(installed), (into, angle) -> into.with("angle", angle, Display.JOINT_ANGLE))
                .withList(
                        "pieces", installed.lengths(), (into, length) -> into.with("length", length, Display.DIMENSION))
                .with("inOnePlane", installed.isInOnePlane())
                .with("residual", installed.residual().equivalentAngle(), Display.JOINT_ANGLE)
                .withOutcome("criticalSpeed", answer.critical().map(CriticalSpeed::speed), Display.ROTATION)
                .withOutcome(
                        "motions", answer.motions(), (into, motions) -> into.withList("at", motions, ShaftTree::motion))
                .withOutcome("couples", answer.couples(), ShaftTree::couples);
    }

    private static void couples(FigureTree tree, ShaftAnswer.Couples couples) {
        tree.with("torque", couples.torque(), Display.TORQUE)
                .with("limitedBy", couples.where())
                .withList(
                        "joints",
                        couples.joints(),
                        (into, couple) -> into.with("onDriving", couple.onDriving(), Display.TORQUE)
                                .with("onDriven", couple.onDriven(), Display.TORQUE)
                                .with("secondOrder", couple.secondOrder(), Display.TORQUE));
    }

    static void critical(FigureTree tree, CriticalSpeedAnswer answer) {
        tree.withList(
                        "shafts",
                        answer.shafts(),
                        (into, shaft) -> into.with("place", shaft.place().label())
                                .with("criticalSpeed", shaft.critical().speed(), Display.ROTATION)
                                .withList(
                                        "modes",
                                        shaft.critical().modes(),
                                        (each, mode) -> each.with("frequency", mode.frequency(), Display.FREQUENCY)
                                                .with("bends", mode.isBending()))
                                .withList(
                                        "reached",
                                        shaft.speeds(),
                                        (each, speed) -> each.with("where", speed.where())
                                                .with("shaftSpeed", speed.speed(), Display.ROTATION)
                                                .with("share", shaft.fraction(speed))))
                .with("missing", answer.missing());
    }

    static void torsion(FigureTree tree, StrengthAnswer answer) {
        tree.withList(
                        "shafts",
                        answer.shafts(),
                        (into, shaft) -> into.with("place", shaft.place().label())
                                .with("torque", shaft.torque(), Display.TORQUE)
                                .with("limitedBy", shaft.where())
                                .withList("pieces", shaft.pieces(), ShaftTree::twisted))
                .with("missing", answer.missing());
    }

    private static void twisted(FigureTree tree, StrengthAnswer.Piece piece) {
        tree.with("shearStress", piece.torsion().stress(), Display.STRESS)
                .withOptional(
                        "twist",
                        piece.length().map(piece.torsion()::twist),
                        (into, twist) -> into.with("twist", twist, Display.JOINT_ANGLE))
                .withOptional(
                        "yieldTorque",
                        piece.torsion().yieldTorque(),
                        (into, torque) -> into.with("yieldTorque", torque, Display.TORQUE));
        piece.torsion().factor().ifPresent(factor -> tree.with("factor", factor));
    }

    private static List<Angle> angles(InstalledShaft installed) {
        List<Angle> angles = new ArrayList<>();
        for (int i = 0; i < installed.line().jointCount(); i++) {
            angles.add(installed.line().angle(i));
        }
        return angles;
    }

    private static void motion(FigureTree tree, ShaftAnswer.Motion at) {
        tree.with("when", at.when())
                .with("roadSpeed", at.road(), Display.ROAD_SPEED)
                .with("shaftSpeed", at.motion().speed(), Display.ROTATION)
                .with("torsional", at.motion().torsional(), Display.SHAKE)
                .withList("drive", at.motion().drive(), ShaftTree::shake)
                .withList("coast", at.motion().coast(), ShaftTree::shake);
    }

    private static void shake(FigureTree tree, AngularAcceleration acceleration) {
        tree.with("inertial", acceleration, Display.SHAKE);
    }

    static void travel(FigureTree tree, TravelAnswer answer) {
        tree.withList("shafts", answer.travels(), ShaftTree::travelled).with("missing", answer.missing());
    }

    private static void travelled(FigureTree tree, ShaftTravel travel) {
        tree.with("place", travel.installed().place().label())
                .with("plunge", travel.plunge(), Display.DIMENSION)
                .with("ride", point(tree, travel.ride()))
                .with("longest", point(tree, travel.longest()))
                .with("shortest", point(tree, travel.shortest()))
                .withList("widest", travel.widest(), ShaftTree::pointInto)
                .with("mostResidual", point(tree, travel.worst()))
                .withOptional(
                        "engagementLeft",
                        travel.engagementLeft(),
                        (into, left) -> into.with("engagementLeft", left, Display.DIMENSION))
                .withOptional(
                        "freeLeft", travel.freeLeft(), (into, left) -> into.with("freeLeft", left, Display.DIMENSION));
    }

    private static FigureTree point(FigureTree tree, TravelPoint point) {
        FigureTree inner = tree.inner();
        pointInto(inner, point);
        return inner;
    }

    private static void pointInto(FigureTree tree, TravelPoint point) {
        tree.with("left", point.left(), Display.DIMENSION)
                .with("right", point.right(), Display.DIMENSION)
                .with("length", point.length(), Display.DIMENSION)
                .withList("joints", point.angles(), (into, angle) -> into.with("angle", angle, Display.JOINT_ANGLE))
                .with("residual", point.residual(), Display.JOINT_ANGLE);
    }
}
