package drivetrain.driveshaft;

import drivetrain.driveshaft.ShaftHouse.Rule;
import drivetrain.finding.Finding;
import drivetrain.finding.HouseLimit;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularAcceleration;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The checks of a shaft in its line. */
public final class LineChecks {

    private static final Source MAKER = Source.given("the joint's maker");

    private LineChecks() {}

    /**
     * Checks the angles of the joints.
     *
     * @param installed the shaft in its line
     * @param house the limits of the shop
     * @return for each joint whether it bends too little or too much, and for a line of two single joints whether the angles are equal
     */
    public static List<Finding> angles(InstalledShaft installed, ShaftHouse house) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < installed.line().jointCount(); i++) {
            findings.add(angle(installed, i, house));
        }
        findings.addAll(lengths(installed, house));
        boolean single = installed.shaft().joints().stream().noneMatch(Joint::isDouble);
        if (single && installed.line().jointCount() == 2) {
            findings.add(equal(installed, house));
        }
        return findings;
    }

    /** A length that is given with the shaft should be that of the line. */
    private static List<Finding> lengths(InstalledShaft installed, ShaftHouse house) {
        List<Finding> findings = new ArrayList<>();
        Length most = house.length(Rule.LENGTH_DIFFERENCE);
        for (int i = 0; i < installed.shaft().pieces().size(); i++) {
            Optional<Length> given = installed.shaft().pieces().get(i).length();
            if (given.isPresent()) {
                Length measured = installed.line().length(i);
                double away = Math.abs(given.get().minus(measured).toMeters());
                boolean agrees = away <= most.toMeters();
                findings.add(Finding.of(
                        installed.place().label() + " shaft, length of piece " + (i + 1) + " against its line",
                        Figure.of(given.get(), Display.DIMENSION),
                        Figure.of(measured, Display.DIMENSION),
                        Figure.of(Length.ofMeters(most.toMeters() - away), Display.DIMENSION),
                        agrees ? Verdict.MET : Verdict.MARGINAL,
                        agrees
                                ? "the shaft is as long as its line"
                                : "the shaft is not as long as its line, so that one of the two is measured wrong",
                        house.source(Rule.LENGTH_DIFFERENCE)));
            }
        }
        return findings;
    }

    private static String name(InstalledShaft installed, int joint) {
        return installed.place().label() + " shaft, joint " + (joint + 1);
    }

    private static Finding angle(InstalledShaft installed, int index, ShaftHouse house) {
        Angle angle = installed.line().angle(index);
        Joint joint = installed.shaft().joints().get(index);
        String name = name(installed, index) + " angle";
        Optional<Angle> most = joint.mostAngle();
        if (most.isPresent() && angle.isGreaterThan(most.get())) {
            return finding(name, angle, most.get(), Verdict.EXCEEDED, "bends more than its maker allows", MAKER);
        }
        if (angle.isLessThan(house.angle(Rule.JOINT_LEAST)) && !joint.isDouble()) {
            return Finding.of(
                    name,
                    Figure.of(angle, Display.JOINT_ANGLE),
                    Verdict.MARGINAL,
                    "is all but straight: the needles of the bearings stand still and dent their races; they want at least "
                            + DecimalText.shortest(house.number(Rule.JOINT_LEAST)) + " deg",
                    house.source(Rule.JOINT_LEAST));
        }
        Angle rule = house.angle(Rule.JOINT_MOST);
        if (angle.isGreaterThan(rule) && !joint.isDouble()) {
            return finding(
                    name,
                    angle,
                    rule,
                    Verdict.MARGINAL,
                    "is more than the rule for a smooth road vehicle; whether it shakes is told by the motion at speed",
                    house.source(Rule.JOINT_MOST));
        }
        return most.map(allowed -> finding(name, angle, allowed, Verdict.MET, "is within what its maker allows", MAKER))
                .orElseGet(() -> joint.isDouble()
                        ? Finding.notEvaluated(
                                name,
                                "the greatest angle of the double joint is not given, such as double joint at output to 25 deg",
                                MAKER)
                        : finding(
                                name,
                                angle,
                                rule,
                                Verdict.MET,
                                "is within the rule for a smooth road vehicle",
                                house.source(Rule.JOINT_MOST)));
    }

    private static Finding equal(InstalledShaft installed, ShaftHouse house) {
        double difference = Math.abs(installed.line().bend(0) - installed.line().bend(1));
        Angle rule = house.angle(Rule.JOINT_DIFFERENCE);
        boolean equal = difference <= rule.toRadians();
        return finding(
                installed.place().label() + " shaft, difference of its joint angles",
                Angle.ofRadians(difference),
                rule,
                equal ? Verdict.MET : Verdict.MARGINAL,
                equal
                        ? "the joints bend alike; whether they cancel also depends on their planes and on the yokes"
                        : "the joints do not bend alike, so that they cannot cancel",
                house.source(Rule.JOINT_DIFFERENCE));
    }

    private static Finding finding(
            String name, Angle value, Angle limit, Verdict verdict, String statement, Source rule) {
        return Finding.of(
                name,
                Figure.of(value, Display.JOINT_ANGLE),
                Figure.of(limit, Display.JOINT_ANGLE),
                Figure.of(limit.minus(value), Display.JOINT_ANGLE),
                verdict,
                statement,
                rule);
    }

    /**
     * Checks the motion at a speed.
     *
     * @param installed the shaft in its line
     * @param motion how it moves
     * @param when when it turns that fast, such as {@code at the cruise speed}
     * @param house the limits of the shop
     * @return the torsional acceleration at the driven end, and the inertial acceleration of each piece, the worse of drive and coast
     */
    public static List<Finding> motion(InstalledShaft installed, LineMotion motion, String when, ShaftHouse house) {
        List<Finding> findings = new ArrayList<>();
        String place = installed.place().label() + " shaft";
        String speed = "at " + Figure.of(motion.speed(), Display.ROTATION).text(UnitSystem.US) + " ";
        findings.add(shake(
                place + ", torsional acceleration " + when,
                motion.torsional(),
                house.of(Rule.TORSIONAL_GOOD),
                house.of(Rule.TORSIONAL_MOST),
                speed + "what its joints leave of each other's unevenness reaches the axle"));
        for (int i = 0; i < motion.drive().size(); i++) {
            AngularAcceleration drive = motion.drive().get(i);
            AngularAcceleration coast = motion.coast().get(i);
            boolean driving = drive.compareTo(coast) >= 0;
            String piece = motion.drive().size() == 1 ? "" : ", piece " + (i + 1);
            findings.add(shake(
                    place + piece + ", inertial acceleration " + when,
                    driving ? drive : coast,
                    house.of(Rule.INERTIAL_GOOD),
                    house.of(Rule.INERTIAL_MOST),
                    speed + "the shaft itself is shaken, cancelled or not, most "
                            + (driving ? "under drive" : "on the overrun")));
        }
        return findings;
    }

    private static Finding shake(
            String name, AngularAcceleration value, HouseLimit good, HouseLimit most, String what) {
        double size = value.toRadiansPerSecondSquared();
        Verdict verdict = size > most.value() ? Verdict.EXCEEDED : size > good.value() ? Verdict.MARGINAL : Verdict.MET;
        boolean within = verdict == Verdict.MET || (verdict == Verdict.MARGINAL && good.isGiven());
        HouseLimit limit = within ? good : most;
        AngularAcceleration allowed = AngularAcceleration.ofRadiansPerSecondSquared(limit.value());
        return Finding.of(
                name,
                Figure.of(value, Display.SHAKE),
                Figure.of(allowed, Display.SHAKE),
                Figure.of(allowed.minus(value), Display.SHAKE),
                verdict,
                what,
                limit.source());
    }

    /** The greatest share of a limit that the line uses at a speed: motion, and joints against their ratings; 1 where one is just kept. */
    static double worstUse(InstalledShaft installed, AngularSpeed speed, ShaftHouse house) {
        double use = motionUse(installed, speed, house);
        for (int i = 0; i < installed.line().jointCount(); i++) {
            double angle = installed.line().bend(i);
            use = Math.max(
                    use,
                    installed
                            .shaft()
                            .joints()
                            .get(i)
                            .mostAngle()
                            .map(most -> angle / most.toRadians())
                            .orElse(0.0));
        }
        return use;
    }

    private static double motionUse(InstalledShaft installed, AngularSpeed speed, ShaftHouse house) {
        LineMotion motion = installed.motionAt(speed);
        double use = motion.torsional().toRadiansPerSecondSquared() / house.number(Rule.TORSIONAL_MOST);
        for (int i = 0; i < motion.drive().size(); i++) {
            double shake = Math.max(
                    motion.drive().get(i).toRadiansPerSecondSquared(),
                    motion.coast().get(i).toRadiansPerSecondSquared());
            use = Math.max(use, shake / house.number(Rule.INERTIAL_MOST));
        }
        return use;
    }

    /**
     * Returns the shaft speed at which the first limit of the motion is reached.
     *
     * @param installed the shaft in its line
     * @param house the limits of the shop
     * @return the speed, or empty if all joints are straight
     */
    public static Optional<AngularSpeed> speedLimit(InstalledShaft installed, ShaftHouse house) {
        double use = motionUse(installed, AngularSpeed.ofRadiansPerSecond(1.0), house);
        return use > 1e-12 ? Optional.of(AngularSpeed.ofRadiansPerSecond(1.0 / Math.sqrt(use))) : Optional.empty();
    }
}
