package drivetrain.assessment;

import drivetrain.combination.ShaftChoice;
import drivetrain.driveshaft.CriticalSpeed;
import drivetrain.driveshaft.InstalledShaft;
import drivetrain.driveshaft.LineChecks;
import drivetrain.driveshaft.LineMotion;
import drivetrain.driveshaft.LineSurvey;
import drivetrain.driveshaft.PinionSlope;
import drivetrain.driveshaft.ReadingTolerance;
import drivetrain.driveshaft.Reclocking;
import drivetrain.driveshaft.SecondaryCouple;
import drivetrain.driveshaft.ShaftHouse;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;
import drivetrain.tire.RollingCircumference;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One driveshaft in its line: how its joints bend, what they leave of each other, how it is shaken at speed, and what its joints do to its bearings under torque.
 *
 * @param installed the shaft in its line
 * @param survey the line as it was measured
 * @param motions how it moves at each road speed at which it is judged; or why that cannot be told
 * @param critical the critical speed with the lengths of the line, or what is missing for it
 * @param couples the couples with which its joints bend the shafts at its greatest torque, or what is missing for them
 * @param assumptions what the answer rests on
 * @param findings the checks of angles and motion
 * @param house the limits of the shop
 */
public record ShaftAnswer(
        InstalledShaft installed,
        LineSurvey survey,
        Outcome<List<Motion>> motions,
        Outcome<CriticalSpeed> critical,
        Outcome<Couples> couples,
        List<Assumption> assumptions,
        List<Finding> findings,
        ShaftHouse house) {

    private static final Assumption GREATEST_TORQUE = Assumption.flagged(
            "secondary couples",
            "the couples are those at the greatest torque of \"loads\", with what is assumed there; friction of the joints is left out",
            Source.derived("balance of moments at a joint"));
    private static final Source RULE = Source.derived("torsional and inertial acceleration at the shaft's speed");

    /**
     * How a shaft moves at a road speed.
     *
     * @param when why it is judged there, such as {@code at cruise}
     * @param road the road speed
     * @param held true if it is driven for long, as at cruise
     * @param motion the shaft speed and the accelerations
     */
    public record Motion(String when, Speed road, boolean held, LineMotion motion) {}

    /**
     * The couples with which the joints bend their shafts.
     *
     * @param torque the greatest torque of the shaft
     * @param where what limits that torque
     * @param joints the couples of each joint, the one at the transfer case first
     */
    public record Couples(Torque torque, String where, List<SecondaryCouple> joints) {

        /** Copies the list. */
        public Couples {
            joints = List.copyOf(joints);
        }
    }

    /** Copies the lists. */
    public ShaftAnswer {
        assumptions = List.copyOf(assumptions);
        findings = List.copyOf(findings);
    }

    static Outcome<ShaftAnswer> of(ShaftGround ground, ShaftChoice choice) {
        return choice.installed().map(installed -> answer(ground, choice, installed));
    }

    private static ShaftAnswer answer(ShaftGround ground, ShaftChoice choice, InstalledShaft installed) {
        ShaftPlace place = installed.place();
        LineSurvey survey = choice.needLine().orThrow();
        Outcome<List<Motion>> motions = motions(ground, installed);
        List<Finding> findings = new ArrayList<>(LineChecks.angles(installed, ground.house()));
        boolean canRest = FrontHubs.canRest(ground.combination(), place);
        motions.value()
                .ifPresent(all -> all.forEach(at -> LineChecks.motion(installed, at.motion(), at.when(), ground.house())
                        .forEach(finding -> findings.add(canRest ? FrontHubs.softened(finding) : finding))));
        findings.addAll(ShaftWhirl.findings(ground, place, Optional.of(ShaftLengths.greatestBend(installed))));
        motions.reason().ifPresent(why -> findings.add(missing(place, why)));
        Outcome<Couples> couples = ShaftTorques.of(ground, place).map(torque -> couples(installed, torque));
        return new ShaftAnswer(
                installed,
                survey,
                motions,
                ground.critical(place),
                couples,
                assumptions(ground, installed, survey, couples),
                findings,
                ground.house());
    }

    private static Couples couples(InstalledShaft installed, ShaftTorques torque) {
        return new Couples(
                torque.torque(),
                torque.missing().isEmpty() ? torque.where() : torque.where() + ", tire slip not known",
                installed.couples(torque.torque()));
    }

    static Finding missing(ShaftPlace place, String reason) {
        return Finding.notEvaluated(place.label() + " shaft, motion at speed", reason, RULE);
    }

    private static List<Assumption> assumptions(
            ShaftGround ground, InstalledShaft installed, LineSurvey survey, Outcome<Couples> couples) {
        ShaftPlace place = installed.place();
        Set<Assumption> assumptions = new LinkedHashSet<>(survey.assumptions());
        assumptions.addAll(installed.assumptions());
        ground.critical(place)
                .value()
                .ifPresent(known -> assumptions.addAll(known.beam().assumptions()));
        ShaftSpeeds.rolling(ground.combination(), place)
                .value()
                .map(RollingCircumference::assumptions)
                .ifPresent(assumptions::addAll);
        if (ground.top().value().isPresent()) {
            assumptions.add(ShaftGround.TOP_SPEED);
        }
        if (couples.value().isPresent()) {
            assumptions.add(GREATEST_TORQUE);
        }
        if (FrontHubs.canRest(ground.combination(), place)) {
            assumptions.add(FrontHubs.LOCKED);
        }
        return List.copyOf(assumptions);
    }

    private static Outcome<List<Motion>> motions(ShaftGround ground, InstalledShaft installed) {
        Optional<String> overbent = installed.overbent();
        if (overbent.isPresent()) {
            return Outcome.notEvaluated(overbent.get());
        }
        List<ShaftSpeeds.Judged> speeds = ShaftSpeeds.judged(ground);
        if (speeds.isEmpty()) {
            return Outcome.notEvaluated("neither a cruise speed nor a top speed is known; type cruise 65 mph");
        }
        Outcome<List<Motion>> motions = Outcome.of(List.of());
        for (ShaftSpeeds.Judged judged : speeds) {
            Outcome<AngularSpeed> turning = ShaftSpeeds.at(ground.combination(), installed.place(), judged.road());
            motions = motions.then(before -> turning.map(speed -> {
                List<Motion> longer = new ArrayList<>(before);
                longer.add(new Motion(judged.when(), judged.road(), judged.held(), installed.motionAt(speed)));
                return List.copyOf(longer);
            }));
        }
        return motions;
    }

    /**
     * Returns the shaft speed at which readings and pinion slopes are judged.
     *
     * @return that of the first road speed: the cruise, where one is asked about
     */
    public Outcome<AngularSpeed> judgedSpeed() {
        return motions.map(all -> all.get(0).motion().speed());
    }

    /**
     * Returns the shaft speed at which the first limit of the motion is reached.
     *
     * @return the speed, or empty if all joints are straight
     */
    public Optional<AngularSpeed> speedLimit() {
        return LineChecks.speedLimit(installed, house);
    }

    /**
     * Solves for the slope of the pinion that cancels best, which takes a while.
     *
     * @return the slope and its range at the judged speed, or why there is none
     */
    public Outcome<PinionSlope> pinionSlope() {
        return judgedSpeed().map(speed -> PinionSlope.of(installed, speed, house));
    }

    /**
     * Tries every tooth of the spline.
     *
     * @return the best one, or why turning it does nothing
     */
    public Outcome<Reclocking> reclocking() {
        return Reclocking.of(installed);
    }

    /**
     * Tries every reading of the survey, which takes a while.
     *
     * @return how wrong each may be before a verdict at the judged speed changes, or why that cannot be told
     */
    public Outcome<List<ReadingTolerance>> tolerances() {
        return judgedSpeed()
                .map(speed -> ReadingTolerance.of(survey, installed.place(), installed.shaft(), speed, house));
    }

    void workInto(Working.Builder working) {
        working.from(installed.residualWorking());
        critical.value().ifPresent(known -> working.from(known.working()));
        couples.value().ifPresent(known -> working.from(installed.couplesWorking(known.torque())));
        motions.value()
                .ifPresent(all -> all.forEach(
                        at -> working.from(at.motion().working(installed.place().label() + " shaft " + at.when()))));
    }
}
