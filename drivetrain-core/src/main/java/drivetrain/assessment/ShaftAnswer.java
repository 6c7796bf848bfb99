package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.ShaftChoice;
import drivetrain.driveshaft.CriticalSpeed;
import drivetrain.driveshaft.InstalledShaft;
import drivetrain.driveshaft.LineChecks;
import drivetrain.driveshaft.LineMotion;
import drivetrain.driveshaft.LineSurvey;
import drivetrain.driveshaft.PinionSlope;
import drivetrain.driveshaft.ReadingTolerance;
import drivetrain.driveshaft.Reclocking;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.gearing.AxleTie;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Speed;
import drivetrain.tire.RollingCircumference;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One driveshaft in its line: how its joints bend, what they leave of each other, and how it is shaken at speed.
 *
 * @param installed the shaft in its line
 * @param survey the line as it was measured
 * @param motions how it moves at each road speed at which it is judged; or why that cannot be told
 * @param critical the critical speed with the lengths of the line, or what is missing for it
 * @param assumptions what the answer rests on
 * @param findings the checks of angles and motion
 */
public record ShaftAnswer(
        InstalledShaft installed,
        LineSurvey survey,
        Outcome<List<Motion>> motions,
        Outcome<CriticalSpeed> critical,
        List<Assumption> assumptions,
        List<Finding> findings) {

    private static final Assumption HUBS_LOCKED = Assumption.flagged(
            "front hubs",
            "the front shaft is taken as turning with its wheels; where free-wheeling hubs are fitted and unlocked it stands still on the road",
            Source.commonPractice("part-time four-wheel drive"));
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

    /** Copies the lists. */
    public ShaftAnswer {
        assumptions = List.copyOf(assumptions);
        findings = List.copyOf(findings);
    }

    static Outcome<ShaftAnswer> of(Combination combination, ShaftChoice choice) {
        return choice.installed().map(installed -> answer(combination, choice, installed));
    }

    private static ShaftAnswer answer(Combination combination, ShaftChoice choice, InstalledShaft installed) {
        LineSurvey survey = choice.needLine().orThrow();
        Outcome<List<Motion>> motions = motions(combination, installed);
        List<Finding> findings = new ArrayList<>(LineChecks.angles(installed));
        Outcome<CriticalSpeed> critical =
                ShaftWhirl.critical(installed.place(), installed.shaft(), installed.lengths());
        boolean canRest = canRest(combination, installed.place());
        motions.value()
                .ifPresent(all -> all.forEach(at -> LineChecks.motion(installed, at.motion(), at.when())
                        .forEach(finding -> findings.add(canRest ? softened(finding) : finding))));
        ShaftWhirl.findings(installed, critical, motions.value().orElse(List.of()))
                .forEach(finding -> findings.add(canRest ? softened(finding) : finding));
        motions.reason()
                .ifPresent(why -> findings.add(
                        Finding.notEvaluated(installed.place().label() + " shaft, motion at speed", why, RULE)));
        Set<Assumption> assumptions = new LinkedHashSet<>(survey.assumptions());
        assumptions.addAll(installed.assumptions());
        critical.value().ifPresent(known -> assumptions.addAll(known.beam().assumptions()));
        ShaftSpeeds.rolling(combination, installed.place())
                .value()
                .map(RollingCircumference::assumptions)
                .ifPresent(assumptions::addAll);
        if (canRest) {
            assumptions.add(HUBS_LOCKED);
        }
        return new ShaftAnswer(installed, survey, motions, critical, List.copyOf(assumptions), findings);
    }

    /** The front shaft of a part-time drive turns on the road only if its hubs are locked. */
    private static boolean canRest(Combination combination, ShaftPlace place) {
        return place == ShaftPlace.FRONT
                && combination
                        .transfer()
                        .map(part -> part.item().tie() == AxleTie.PART_TIME)
                        .orElse(false);
    }

    private static Finding softened(Finding finding) {
        if (finding.verdict() != Verdict.EXCEEDED) {
            return finding;
        }
        return new Finding(
                finding.checked(),
                finding.value(),
                finding.limit(),
                finding.margin(),
                Verdict.MARGINAL,
                finding.statement() + "; with free-wheeling hubs unlocked the front shaft stands still",
                finding.rule());
    }

    private static Outcome<List<Motion>> motions(Combination combination, InstalledShaft installed) {
        Optional<String> overbent = installed.overbent();
        if (overbent.isPresent()) {
            return Outcome.notEvaluated(overbent.get());
        }
        List<ShaftSpeeds.Judged> speeds = ShaftSpeeds.judged(combination);
        if (speeds.isEmpty()) {
            return Outcome.notEvaluated("neither a cruise speed nor a top speed is known; type cruise 65 mph");
        }
        Outcome<List<Motion>> motions = Outcome.of(List.of());
        for (ShaftSpeeds.Judged judged : speeds) {
            Outcome<AngularSpeed> turning = ShaftSpeeds.at(combination, installed.place(), judged.road());
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
     * Solves for the slope of the pinion that cancels best, which takes a while.
     *
     * @return the slope and its range at the judged speed, or why there is none
     */
    public Outcome<PinionSlope> pinionSlope() {
        return judgedSpeed().map(speed -> PinionSlope.of(installed, speed));
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
        return judgedSpeed().map(speed -> ReadingTolerance.of(survey, installed.place(), installed.shaft(), speed));
    }

    void workInto(Working.Builder working) {
        working.from(installed.residualWorking());
        critical.value().ifPresent(known -> working.from(known.working()));
        motions.value()
                .ifPresent(all -> all.forEach(
                        at -> working.from(at.motion().working(installed.place().label() + " shaft " + at.when()))));
    }
}
