package drivetrain.report;

import drivetrain.assessment.ShaftAnswer;
import drivetrain.assessment.ShaftsAnswer;
import drivetrain.driveshaft.InstalledShaft;
import drivetrain.driveshaft.Joint;
import drivetrain.driveshaft.JointLaw;
import drivetrain.driveshaft.PinionSlope;
import drivetrain.driveshaft.Reclocking;
import drivetrain.driveshaft.SecondaryCouple;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularAcceleration;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Torque;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** The driveshafts: their joints, what these leave of each other, what would mend it, and how the shafts are shaken at speed. */
public final class ShaftsReport {

    private ShaftsReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentences
     * @return the report
     */
    public static Report of(ShaftsAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        answer.shafts().forEach(shaft -> sentences.add(sentence(shaft, units)));
        answer.missing().forEach(why -> sentences.add("Not everything is evaluated because " + why + "."));
        blocks.add(Sentence.answer(String.join(" ", sentences)));
        blocks.add(joints(answer.shafts()));
        for (ShaftAnswer shaft : answer.shafts()) {
            String place = shaft.installed().place().label();
            blocks.add(new Facts(place + "Line", capital(place) + " line", facts(shaft, units)));
        }
        blocks.add(motion(answer.shafts()));
        if (answer.shafts().stream().anyMatch(shaft -> shaft.couples().value().isPresent())) {
            blocks.add(couples(answer.shafts()));
        }
        return AnswerGround.report("shafts", blocks, answer);
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private static String sentence(ShaftAnswer answer, UnitSystem units) {
        InstalledShaft installed = answer.installed();
        List<String> angles = new ArrayList<>();
        for (int i = 0; i < installed.line().jointCount(); i++) {
            angles.add(angle(installed.line().angle(i)).text(units));
        }
        return "The joints of the " + installed.place().label() + " shaft bend by " + joined(angles)
                + (installed.isInOnePlane() ? ", in one plane" : ", not in one plane")
                + "; together they shake the axle like one joint at "
                + angle(installed.residual().equivalentAngle()).text(units) + ".";
    }

    private static String joined(List<String> words) {
        int last = words.size() - 1;
        return String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    private static Figure angle(Angle angle) {
        return Figure.of(angle, Display.JOINT_ANGLE);
    }

    private static Grid joints(List<ShaftAnswer> shafts) {
        List<List<Cell>> rows = new ArrayList<>();
        for (ShaftAnswer shaft : shafts) {
            InstalledShaft installed = shaft.installed();
            for (int i = 0; i < installed.line().jointCount(); i++) {
                Joint joint = installed.shaft().joints().get(i);
                Angle bend = installed.line().angle(i);
                rows.add(List.of(
                        Cell.of(installed.place().label() + " " + (i + 1)),
                        Cell.of(joint.kind().label()),
                        Cell.of(angle(bend)),
                        joint.mostAngle().map(most -> Cell.of(angle(most))).orElse(Cell.empty()),
                        joint.isDouble()
                                ? Cell.empty()
                                : Cell.of(Figure.percent(JointLaw.at(bend).fluctuation(), 2))));
            }
        }
        return new Grid(
                "joints",
                "Joints, from the transfer case to the axle",
                List.of(
                        Column.ofText("joint", "joint"),
                        Column.ofText("kind", "kind"),
                        Column.ofFigures("angle", "angle"),
                        Column.ofFigures("allowed", "allowed"),
                        Column.ofFigures("swing", "speed swing")),
                rows);
    }

    private static List<Fact> facts(ShaftAnswer answer, UnitSystem units) {
        InstalledShaft installed = answer.installed();
        List<Fact> facts = new ArrayList<>();
        for (int i = 0; i < installed.lengths().size(); i++) {
            String piece = installed.lengths().size() == 1 ? "" : " " + (i + 1);
            facts.add(Fact.of(
                    "length" + (i + 1),
                    "length" + piece + ", joint to joint",
                    Figure.of(installed.lengths().get(i), Display.DIMENSION)));
            facts.add(Fact.of(
                    "planeAngle" + (i + 1),
                    "angle between the joint planes" + piece,
                    angle(installed.line().planeAngle(i))));
        }
        facts.add(Fact.of(
                "residual",
                "equivalent residual angle",
                angle(installed.residual().equivalentAngle())));
        answer.speedLimit()
                .ifPresent(speed -> facts.add(Fact.of(
                        "speedLimit", "shaft speed at the first limit of motion", Figure.of(speed, Display.ROTATION))));
        facts.add(new Fact(
                "criticalSpeed",
                "critical speed",
                Cell.of(answer.critical().map(critical -> Figure.of(critical.speed(), Display.ROTATION)))));
        facts.addAll(greatestTorque(answer.couples()));
        facts.add(new Fact("spline", "best clocking of the spline", clocking(answer.reclocking(), units)));
        facts.addAll(pinion(answer.pinionSlope(), units));
        return facts;
    }

    private static Cell clocking(Outcome<Reclocking> outcome, UnitSystem units) {
        return outcome.fold(
                best -> Cell.of(
                        best.teeth() == 0
                                ? "as it is"
                                : Math.abs(best.teeth()) + (Math.abs(best.teeth()) == 1 ? " tooth " : " teeth ")
                                        + (best.teeth() > 0 ? "clockwise" : "counterclockwise")
                                        + " (axle end, seen from the transfer case): leaves "
                                        + angle(best.after()).text(units)),
                Cell::notEvaluated);
    }

    private static List<Fact> pinion(Outcome<PinionSlope> outcome, UnitSystem units) {
        return outcome.fold(
                slope -> List.of(
                        Fact.of("pinionSlope", "pinion slope now", slopeWords(slope.present(), units)),
                        Fact.of(
                                "bestPinionSlope",
                                "best pinion slope",
                                slopeWords(slope.best(), units) + ": leaves "
                                        + angle(slope.residual()).text(units)),
                        Fact.of("pinionRange", "pinion slopes within limits", range(slope, units))),
                reason -> List.of(new Fact("bestPinionSlope", "best pinion slope", Cell.notEvaluated(reason))));
    }

    private static String range(PinionSlope slope, UnitSystem units) {
        if (slope.least().isEmpty() || slope.most().isEmpty()) {
            return "none: even the best one exceeds a limit";
        }
        return slopeWords(slope.least().get(), units) + " to "
                + slopeWords(slope.most().get(), units);
    }

    /** A slope in words: down where the axis falls toward the axle. */
    private static String slopeWords(Angle slope, UnitSystem units) {
        boolean down = slope.toRadians() >= 0.0;
        return angle(down ? slope : slope.times(-1.0)).text(units) + (down ? " down" : " up");
    }

    private static Grid motion(List<ShaftAnswer> shafts) {
        List<List<Cell>> rows = new ArrayList<>();
        for (ShaftAnswer shaft : shafts) {
            String place = shaft.installed().place().label();
            shaft.motions()
                    .value()
                    .ifPresent(all -> all.forEach(at -> rows.add(List.of(
                            Cell.of(place + ", " + at.when()),
                            Cell.of(Figure.of(at.road(), Display.ROAD_SPEED)),
                            Cell.of(Figure.of(at.motion().speed(), Display.ROTATION)),
                            Cell.of(shake(at.motion().torsional())),
                            Cell.of(shake(greatest(at.motion().drive()))),
                            Cell.of(shake(greatest(at.motion().coast())))))));
            shaft.motions()
                    .reason()
                    .ifPresent(why -> rows.add(List.of(
                            Cell.of(place),
                            Cell.notEvaluated(why),
                            Cell.empty(),
                            Cell.empty(),
                            Cell.empty(),
                            Cell.empty())));
        }
        return new Grid(
                "motion",
                "Greatest angular acceleration: of the axle (torsional), of the shaft itself (inertial)",
                List.of(
                        Column.ofText("shaft", "shaft"),
                        Column.ofFigures("roadSpeed", "road speed"),
                        Column.ofFigures("shaftSpeed", "shaft speed"),
                        Column.ofFigures("torsional", "torsional"),
                        Column.ofFigures("drive", "inertial, drive"),
                        Column.ofFigures("coast", "inertial, coast")),
                rows);
    }

    private static Grid couples(List<ShaftAnswer> shafts) {
        List<List<Cell>> rows = new ArrayList<>();
        for (ShaftAnswer shaft : shafts) {
            String place = shaft.installed().place().label();
            shaft.couples().value().ifPresent(couples -> {
                for (int i = 0; i < couples.joints().size(); i++) {
                    SecondaryCouple couple = couples.joints().get(i);
                    rows.add(List.of(
                            Cell.of(place + " " + (i + 1)),
                            Cell.of(torque(couple.onDriving())),
                            Cell.of(torque(couple.onDriven())),
                            Cell.of(torque(couple.secondOrder()))));
                }
            });
        }
        return new Grid(
                "couples",
                "Secondary couples at the greatest torque, which bend the shafts beside each joint; of a single joint half is of second order",
                List.of(
                        Column.ofText("joint", "joint"),
                        Column.ofFigures("driving", "driving side"),
                        Column.ofFigures("driven", "driven side"),
                        Column.ofFigures("secondOrder", "2nd order")),
                rows);
    }

    private static List<Fact> greatestTorque(Outcome<ShaftAnswer.Couples> couples) {
        return couples.fold(
                known -> List.of(
                        Fact.of("torque", "greatest torque", torque(known.torque())),
                        Fact.of("torqueSetBy", "greatest torque is set by", known.where())),
                reason -> List.of(new Fact("torque", "greatest torque", Cell.notEvaluated(reason))));
    }

    private static Figure torque(Torque torque) {
        return Figure.of(torque, Display.TORQUE);
    }

    private static AngularAcceleration greatest(List<AngularAcceleration> all) {
        return all.stream().max(AngularAcceleration::compareTo).orElseThrow();
    }

    private static Figure shake(AngularAcceleration acceleration) {
        return Figure.of(acceleration, Display.SHAKE);
    }
}
