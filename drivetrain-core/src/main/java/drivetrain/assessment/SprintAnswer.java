package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.Vehicle;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.gearing.Range;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Force;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.MomentOfInertia;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Time;
import drivetrain.road.EffectiveMass;
import drivetrain.road.ForceCurve;
import drivetrain.road.RoadCautions;
import drivetrain.road.RoadLoad;
import drivetrain.road.ShiftPoint;
import drivetrain.road.SpeedRun;
import java.util.ArrayList;
import java.util.List;

/**
 * How fast the vehicle gathers speed from rest at full load, high range, shifting where the next gear pulls as hard.
 *
 * @param run the run
 * @param quarterMile the same run over a quarter mile, or why it does not end
 * @param shifts where the gears are changed
 * @param load the resistance
 * @param grip the greatest force that the tires put down
 * @param assumptions what the times rest on
 */
public record SprintAnswer(
        SpeedRun run,
        Outcome<SpeedRun> quarterMile,
        List<ShiftPoint> shifts,
        RoadLoad load,
        DriveGrip grip,
        List<Assumption> assumptions)
        implements Answer {

    /** The speed to which a run goes where none is named, 60 mph. */
    public static final Speed USUAL_TARGET = Speed.ofMilesPerHour(60.0);

    private static final Length QUARTER_MILE = Length.ofMiles(0.25);
    private static final Time MANUAL_SHIFT = Time.ofSeconds(0.5);
    private static final Time NO_TIME = Time.ofSeconds(0.0);
    private static final int WHEELS = 4;
    private static final int WHEELS_WITH_DUALS = 6;
    private static final double MARK_STEP_MPH = 10.0;
    private static final Assumption BY_HAND = Assumption.flagged(
            "shift time",
            "each shift takes 0.5 s without drive; drivers differ by as much again",
            Source.commonPractice("a brisk shift by hand"));
    private static final Assumption POWERED = Assumption.flagged(
            "shift time",
            "the transmission shifts without a break in the drive",
            Source.commonPractice("automatic transmissions shift under load"));
    private static final Source MOTION = Source.derived(
            "m_e dv/dt = the lesser of driving force and grip, less the resistance; integrated by the Dormand-Prince 5(4) pair");

    /** Copies the lists. */
    public SprintAnswer {
        shifts = List.copyOf(shifts);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @param target the speed at which the run ends, greater than zero
     * @return the answer, or what is missing
     * @throws drivetrain.refusal.RefusedException if the speed is not greater than zero
     */
    public static Outcome<SprintAnswer> to(Combination combination, Speed target) {
        target.requirePositive("target speed");
        return SpeedLimiter.allowed(combination, target)
                .then(speed -> RoadGround.load(combination))
                .then(load -> GearPulls.of(combination)
                        .then(pulls -> DriveGrip.forRoad(combination, load)
                                .then(grip -> answer(combination, target, load, pulls, grip))));
    }

    private static Outcome<SprintAnswer> answer(
            Combination combination, Speed target, RoadLoad load, GearPulls pulls, DriveGrip grip) {
        Vehicle vehicle = combination.needVehicle().orThrow();
        List<GearPulls.Gear> gears = pulls.gears().stream()
                .filter(pull ->
                        pull.gear().range() == Range.HIGH && !pull.gear().auxiliaryEngaged())
                .toList();
        List<ForceCurve> curves = gears.stream().map(GearPulls.Gear::curve).toList();
        List<ShiftPoint> shifts = ShiftPoint.of(curves);
        SpeedRun.Plan plan = plan(vehicle, pulls, gears, shifts, load, grip.force());
        List<Assumption> assumptions = assumptions(combination, vehicle, pulls, grip);
        return SpeedRun.toSpeed(plan, target, marks(target))
                .map(run -> new SprintAnswer(run, quarterMile(combination, plan), shifts, load, grip, assumptions));
    }

    /** A quarter mile at full load, which ends before the limiter holds the vehicle. */
    private static Outcome<SpeedRun> quarterMile(Combination combination, SpeedRun.Plan plan) {
        return SpeedRun.overDistance(plan, QUARTER_MILE, List.of())
                .then(run -> SpeedLimiter.allowed(combination, run.speed()).map(speed -> run));
    }

    private static List<Speed> marks(Speed target) {
        List<Speed> marks = new ArrayList<>();
        for (double mph = MARK_STEP_MPH; mph < target.toMilesPerHour() - 0.1; mph += MARK_STEP_MPH) {
            marks.add(Speed.ofMilesPerHour(mph));
        }
        marks.add(target);
        return marks;
    }

    private static SpeedRun.Plan plan(
            Vehicle vehicle,
            GearPulls pulls,
            List<GearPulls.Gear> gears,
            List<ShiftPoint> shifts,
            RoadLoad load,
            Force grip) {
        MomentOfInertia engine = vehicle.road().engineInertia().orElseGet(EffectiveMass::defaultEngine);
        MomentOfInertia wheels = vehicle.road()
                .wheelInertia()
                .orElseGet(EffectiveMass::defaultWheel)
                .times(vehicle.dualRearWheels() ? WHEELS_WITH_DUALS : WHEELS);
        Length radius = pulls.rolling().radius();
        List<SpeedRun.Gear> planned = new ArrayList<>();
        for (int i = 0; i < gears.size(); i++) {
            GearPulls.Gear pull = gears.get(i);
            Mass effective = EffectiveMass.of(
                    load.mass(), engine, pull.gear().totalRatio(), pull.gear().efficiency(), wheels, radius);
            Speed end = i < shifts.size() ? shifts.get(i).speed() : pull.curve().highest();
            planned.add(new SpeedRun.Gear(pull.curve(), effective, end));
        }
        Mass coasting = EffectiveMass.of(load.mass(), engine.times(0.0), 1.0, 1.0, wheels, radius);
        return new SpeedRun.Plan(planned, load, grip, shiftTime(pulls), coasting);
    }

    private static Time shiftTime(GearPulls pulls) {
        return isAutomatic(pulls) ? NO_TIME : MANUAL_SHIFT;
    }

    private static boolean isAutomatic(GearPulls pulls) {
        return pulls.train().transmission().coupling() instanceof drivetrain.gearing.Converter;
    }

    private static List<Assumption> assumptions(
            Combination combination, Vehicle vehicle, GearPulls pulls, DriveGrip grip) {
        List<Assumption> all = new ArrayList<>(RoadGround.loadAssumptions(combination));
        all.addAll(pulls.assumptions());
        all.addAll(pulls.startAssumptions());
        all.addAll(grip.assumptions());
        all.add(isAutomatic(pulls) ? POWERED : BY_HAND);
        if (vehicle.road().engineInertia().isEmpty()) {
            all.add(EffectiveMass.engineAssumption());
        }
        if (vehicle.road().wheelInertia().isEmpty()) {
            all.add(EffectiveMass.wheelAssumption());
        }
        return all;
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Caution> cautions() {
        return RoadCautions.speed();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("run from rest")
                .from(load.working(run.speed()))
                .input("grip of the driven wheels", "F_grip", Figure.of(grip.force(), Display.FORCE), "grip");
        for (SpeedRun.Phase phase : run.phases()) {
            working.input(
                    "effective mass, " + phase.label(),
                    "m_e",
                    Figure.of(phase.effectiveMass(), Display.MASS),
                    "m + (I_e i^2 e + I_w) / r^2");
        }
        run.marks()
                .forEach(mark -> working.step(
                        "time to " + mark.speed().format(Speed.MILE_PER_HOUR, 0),
                        "t = integral of m_e dv / (F - R - D)",
                        Figure.of(mark.time(), Display.RUN_TIME)));
        return working.step("distance covered", "x = integral of v dt", Figure.of(run.distance(), Display.RUN_LENGTH))
                .source(MOTION)
                .source(EffectiveMass.SOURCE)
                .build();
    }
}
