package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.gearing.DriveGear;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Speed;
import drivetrain.road.ForceCurve;
import drivetrain.road.GradeHeld;
import drivetrain.road.RoadCautions;
import drivetrain.road.RoadLoad;
import drivetrain.road.TopSpeed;
import drivetrain.tire.RollingCircumference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How fast the vehicle really goes: in each gear the lowest of what the power, the gearing and a speed limiter allow.
 *
 * @param combination the drivetrain package
 * @param load the resistance on the level
 * @param rolling the rolling circumference
 * @param fastest the gear in which it is fastest, the tallest where a limiter makes several alike
 * @param rows every forward gear, from the shortest to the tallest
 * @param assumptions what the speeds rest on
 * @param findings whether the tire may go that fast, and whether the air lies in the range of the power correction
 */
public record TopAnswer(
        Combination combination,
        RoadLoad load,
        RollingCircumference rolling,
        Row fastest,
        List<Row> rows,
        List<Assumption> assumptions,
        List<Finding> findings)
        implements Answer {

    /**
     * One gear.
     *
     * @param gear the gear
     * @param curve its driving force
     * @param top the top speed in it, or that it holds no speed
     * @param engineSpeed the engine speed there, with clutch or converter locked
     * @param driveshaftSpeed the speed of the driveshaft there
     */
    public record Row(
            DriveGear gear,
            ForceCurve curve,
            Outcome<TopSpeed> top,
            Outcome<AngularSpeed> engineSpeed,
            Outcome<AngularSpeed> driveshaftSpeed) {}

    /** Copies the lists. */
    public TopAnswer {
        rows = List.copyOf(rows);
        assumptions = List.copyOf(assumptions);
        findings = List.copyOf(findings);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing
     */
    public static Outcome<TopAnswer> of(Combination combination) {
        return of(combination, GearPulls.of(combination));
    }

    static Outcome<TopAnswer> of(Combination combination, Outcome<GearPulls> pulls) {
        return RoadGround.load(combination).then(load -> pulls.then(known -> answer(combination, load, known)));
    }

    private static Outcome<TopAnswer> answer(Combination combination, RoadLoad load, GearPulls pulls) {
        List<Row> rows = pulls.gears().stream()
                .map(gear -> row(gear, load, pulls, combination.limiter()))
                .toList();
        Optional<Row> fastest = rows.stream()
                .filter(row -> row.top().value().isPresent())
                .reduce((shorter, taller) -> speed(taller).isLessThan(speed(shorter)) ? shorter : taller);
        return Outcome.of(fastest, "the engine cannot hold any speed in any gear against this resistance")
                .map(best -> {
                    List<Assumption> assumptions = new ArrayList<>(RoadGround.loadAssumptions(combination));
                    assumptions.addAll(pulls.assumptions());
                    SpeedLimiter.assumption(combination).ifPresent(assumptions::add);
                    return new TopAnswer(
                            combination,
                            load,
                            pulls.rolling(),
                            best,
                            rows,
                            assumptions,
                            findings(combination, pulls, best));
                });
    }

    private static Speed speed(Row row) {
        return row.top().orThrow().speed();
    }

    private static Row row(GearPulls.Gear pull, RoadLoad load, GearPulls pulls, Optional<Speed> limiter) {
        Outcome<TopSpeed> top = TopSpeed.of(pull.curve(), load, limiter);
        Outcome<AngularSpeed> engine = top.map(found ->
                pull.gear().engineSpeedAt(found.speed(), pulls.rolling().radius()));
        return new Row(
                pull.gear(),
                pull.curve(),
                top,
                engine,
                engine.map(speed -> pull.gear().driveshaftSpeedAt(speed)));
    }

    private static List<Finding> findings(Combination combination, GearPulls pulls, Row best) {
        List<Finding> findings = new ArrayList<>();
        Speed reached = best.top().orThrow().speed();
        combination
                .tire()
                .ifPresent(tire -> findings.add(DriveChecks.reachedSpeed("reachable top", tire.item(), reached)));
        combination
                .frontTire()
                .filter(tire -> !combination.tire().equals(Optional.of(tire)))
                .ifPresent(
                        tire -> findings.add(DriveChecks.reachedSpeed("reachable top, front", tire.item(), reached)));
        findings.addAll(pulls.engine().findings());
        return findings;
    }

    @Override
    public List<Caution> cautions() {
        return RoadCautions.speed();
    }

    @Override
    public Working working() {
        TopSpeed top = fastest.top().orThrow();
        Working.Builder working = Working.of("top speed");
        ForceWorking.into(working, combination, fastest.gear(), top.speed());
        GradeHeld.of(fastest.curve(), load, top.speed()).value().ifPresent(held -> working.from(held.working(load)));
        return working.source(
                        Source.derived(
                                "top speed in a gear: the highest speed at which the driving force meets the resistance, the end of the gear, or the speed limiter"))
                .build();
    }
}
