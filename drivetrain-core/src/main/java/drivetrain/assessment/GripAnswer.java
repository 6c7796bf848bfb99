package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.quantity.Force;
import drivetrain.road.DriveLayout;
import drivetrain.road.Grade;
import drivetrain.road.GradeHeld;
import drivetrain.road.Grip;
import drivetrain.road.RoadCautions;
import drivetrain.road.RoadLoad;
import drivetrain.road.Surface;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * What the tires can put on the ground, how steep that climbs, and whether engine or grip sets the limit in the shortest gear.
 *
 * @param surface the ground
 * @param rows every way in which the transfer case can drive
 * @param engine the driving force of the shortest gear at its slowest, and the grade that it holds there; or what is missing
 * @param assumptions what it rests on
 */
public record GripAnswer(Surface surface, List<Row> rows, Outcome<EngineLimit> engine, List<Assumption> assumptions)
        implements Answer {

    /**
     * One way to drive.
     *
     * @param layout which wheels drive
     * @param grip how it is worked out
     * @param sliding the greatest force on the level with sliding friction, which is what can be counted on
     * @param peak the greatest force on the level with peak friction, which loads the parts
     * @param steepest the steepest grade by sliding friction, or that there is none
     */
    public record Row(DriveLayout layout, Grip grip, Force sliding, Force peak, Outcome<Grade> steepest) {}

    /**
     * What the engine can do.
     *
     * @param gear the shortest gear
     * @param force the greatest driving force in it
     * @param steepest the grade that it holds at that force, or that grip and balance set it
     */
    public record EngineLimit(String gear, Force force, Outcome<Grade> steepest) {}

    /** Copies the lists. */
    public GripAnswer {
        rows = List.copyOf(rows);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Asks on the surface of the order.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing
     */
    public static Outcome<GripAnswer> of(Combination combination) {
        return of(combination, GearPulls.of(combination));
    }

    static Outcome<GripAnswer> of(Combination combination, Outcome<GearPulls> pulls) {
        return on(combination, RoadGround.surface(combination), pulls)
                .map(answer -> answer.with(RoadGround.surfaceAssumption(combination)));
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @param surface the ground
     * @return the answer, or what is missing
     */
    public static Outcome<GripAnswer> on(Combination combination, Surface surface) {
        return on(combination, surface, GearPulls.of(combination));
    }

    private static Outcome<GripAnswer> on(Combination combination, Surface surface, Outcome<GearPulls> pulls) {
        return combination
                .gearTrain()
                .then(train -> RoadGround.balance(combination).map(balance -> {
                    Grip sliding = new Grip(balance, surface.sliding(), surface.rolling());
                    Grip peak = new Grip(balance, surface.peak(), surface.rolling());
                    List<Row> rows = DriveGrip.layouts(train.transferCase().tie()).stream()
                            .map(layout -> new Row(
                                    layout,
                                    sliding,
                                    sliding.greatest(layout, Grade.level()),
                                    peak.greatest(layout, Grade.level()),
                                    sliding.steepest(layout)))
                            .toList();
                    Outcome<EngineLimit> engine = engine(combination, surface, pulls);
                    return new GripAnswer(surface, rows, engine, assumptions(surface, engine, pulls));
                }));
    }

    private GripAnswer with(Optional<Assumption> more) {
        List<Assumption> all = new ArrayList<>(assumptions);
        more.ifPresent(assumption -> all.add(0, assumption));
        return new GripAnswer(surface, rows, engine, all);
    }

    private static Outcome<EngineLimit> engine(Combination combination, Surface surface, Outcome<GearPulls> pulls) {
        return RoadGround.load(combination)
                .then(load -> pulls.map(known -> {
                    RoadLoad there = RoadLoad.level(load.mass(), surface, load.dragArea(), load.airDensity());
                    GearPulls.Gear lowest = known.gears().get(0);
                    Strongest strongest = Strongest.of(lowest.curve());
                    Outcome<Grade> steepest = GradeHeld.of(lowest.curve(), there, strongest.speed())
                            .then(GradeHeld::steepest);
                    return new EngineLimit(lowest.gear().label(), strongest.force(), steepest);
                }));
    }

    private static List<Assumption> assumptions(
            Surface surface, Outcome<EngineLimit> engine, Outcome<GearPulls> pulls) {
        LinkedHashSet<Assumption> all = new LinkedHashSet<>();
        all.add(surface.slidingAssumption());
        all.add(surface.peakAssumption());
        all.addAll(surface.rollingAssumptions());
        engine.then(known -> pulls).value().ifPresent(known -> all.addAll(known.assumptions()));
        return List.copyOf(all);
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Caution> cautions() {
        return RoadCautions.grades();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("grip on " + surface.description());
        rows.forEach(row -> working.from(row.grip().working(row.layout(), Grade.level())));
        return working.source(surface.frictionSource())
                .source(surface.rollingSource())
                .build();
    }
}
