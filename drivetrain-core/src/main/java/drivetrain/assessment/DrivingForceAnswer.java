package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.Range;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Force;
import drivetrain.quantity.Power;
import drivetrain.quantity.Speed;
import drivetrain.road.RoadCautions;
import drivetrain.road.RoadLoad;
import java.util.ArrayList;
import java.util.List;

/**
 * Driving force in every gear of a range against the resistance on the level, for drawing.
 *
 * @param load the resistance
 * @param gears the curves of the gears, shortest first
 * @param resistance the resistance at the same speeds, from rest to the highest speed of the gears
 * @param assumptions what they rest on
 */
public record DrivingForceAnswer(RoadLoad load, List<Curve> gears, List<Point> resistance, List<Assumption> assumptions)
        implements Answer {

    private static final int SAMPLES = 40;

    /**
     * One gear.
     *
     * @param gear the gear
     * @param points its points with rising speed
     */
    public record Curve(DriveGear gear, List<Point> points) {

        /** Copies the list. */
        public Curve {
            points = List.copyOf(points);
        }
    }

    /**
     * One point.
     *
     * @param speed the road speed
     * @param force the force at the wheels
     * @param power the power at the wheels
     */
    public record Point(Speed speed, Force force, Power power) {

        static Point of(Speed speed, Force force) {
            return new Point(speed, force, Power.ofWatts(force.si() * speed.si()));
        }
    }

    /** Copies the lists. */
    public DrivingForceAnswer {
        gears = List.copyOf(gears);
        resistance = List.copyOf(resistance);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @param range the range of the transfer case
     * @return the answer, or what is missing
     */
    public static Outcome<DrivingForceAnswer> of(Combination combination, Range range) {
        return RoadGround.load(combination)
                .then(load -> GearPulls.of(combination).then(pulls -> answer(combination, load, pulls, range)));
    }

    private static Outcome<DrivingForceAnswer> answer(
            Combination combination, RoadLoad load, GearPulls pulls, Range range) {
        List<Curve> curves = new ArrayList<>();
        Speed highest = Speed.ofMetersPerSecond(0.0);
        for (GearPulls.Gear pull : pulls.gears()) {
            if (pull.gear().range() == range && !pull.gear().auxiliaryEngaged()) {
                List<Point> points = Strongest.samples(pull.curve(), SAMPLES).stream()
                        .map(sample -> Point.of(sample.speed(), sample.force()))
                        .toList();
                curves.add(new Curve(pull.gear(), points));
                highest = pull.curve().highest().isGreaterThan(highest)
                        ? pull.curve().highest()
                        : highest;
            }
        }
        if (curves.isEmpty()) {
            return Outcome.notEvaluated("the transfer case has no low range");
        }
        List<Assumption> assumptions = new ArrayList<>(RoadGround.loadAssumptions(combination));
        assumptions.addAll(pulls.assumptions());
        return Outcome.of(new DrivingForceAnswer(load, curves, resistance(load, highest), assumptions));
    }

    private static List<Point> resistance(RoadLoad load, Speed highest) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= SAMPLES; i++) {
            Speed speed = highest.times((double) i / SAMPLES);
            points.add(Point.of(speed, load.total(speed)));
        }
        return points;
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
        Working.Builder working = Working.of("driving force against resistance")
                .from(load.working(resistance.get(SAMPLES).speed()));
        for (Curve curve : gears) {
            Point last = curve.points().get(curve.points().size() - 1);
            working.step(
                    "driving force in " + curve.gear().label() + " at "
                            + last.speed().format(Speed.MILE_PER_HOUR, 1),
                    "F = T_e x ratio x efficiency / r",
                    Figure.of(last.force(), Display.FORCE));
        }
        return working.source(Source.derived("power out = efficiency x power in"))
                .build();
    }
}
