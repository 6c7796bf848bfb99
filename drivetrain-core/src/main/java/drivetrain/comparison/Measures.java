package drivetrain.comparison;

import drivetrain.assessment.CriticalSpeedAnswer;
import drivetrain.assessment.EngineAnswer;
import drivetrain.assessment.Question;
import drivetrain.assessment.SpeedometerAnswer;
import drivetrain.assessment.SupplyAnswer;
import drivetrain.assessment.TireAnswer;
import drivetrain.combination.Combination;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.engine.Engine;
import drivetrain.finding.Outcome;
import drivetrain.fuel.FuelCautions;
import drivetrain.gearing.Crawl;
import drivetrain.gearing.DriveGear;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Length;
import drivetrain.quantity.Power;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;
import drivetrain.quantity.VolumeFlow;
import drivetrain.tire.RollingCircumference;
import drivetrain.tire.Tire;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * The measures that there are.
 *
 * <p>Those of the gearing make the same calls as the assessment does, without the checks and assumptions that go with its answers, because a sweep asks for
 * them thousands of times; a test holds the two together.
 */
public final class Measures {

    private static final Scale ROTATION = Scale.of(AngularSpeed.KIND, Display.ROTATION);
    private static final LastCritical CRITICAL = new LastCritical(ShaftPlace.REAR);
    private static final Speed FAST = Speed.ofMilesPerHour(100.0);

    /** Total ratio of the shortest gear. */
    public static final Measure CRAWL_RATIO = Measure.of(
            "crawlRatio",
            "crawl ratio",
            Better.HIGHER,
            Scale.plain(1),
            from(Question.CRAWL),
            combination -> combination.gearTrain().map(train -> Crawl.of(train).ratio()));

    /** Road speed at idle in the shortest gear. */
    public static final Measure CRAWL_SPEED = Measure.of(
            "crawlSpeed",
            "crawl speed",
            Better.LOWER,
            Scale.of(Speed.KIND, Display.CRAWL_SPEED),
            from(Question.CRAWL),
            combination -> combination
                    .gearTrain()
                    .then(train -> idle(combination)
                            .then(idle -> radius(combination)
                                    .map(radius -> Crawl.of(train)
                                            .speedAt(idle, radius)
                                            .si()))));

    /** Torque at all driven wheels in the shortest gear at the engine's greatest torque, nothing slipping. */
    public static final Measure WHEEL_TORQUE = Measure.of(
            "wheelTorque",
            "wheel torque",
            Better.HIGHER,
            Scale.of(Torque.KIND, Display.TORQUE),
            from(Question.TORQUE),
            combination -> combination
                    .gearTrain()
                    .then(train -> combination
                            .needEngine()
                            .then(Engine::peakTorque)
                            .map(peak ->
                                    train.lowest().wheelTorque(peak.torque()).si())));

    /** Road speed in top gear at the engine's maximum speed. */
    public static final Measure GEARED_SPEED = Measure.of(
            "gearedSpeed",
            "geared speed",
            Better.NEITHER,
            Scale.of(Speed.KIND, Display.ROAD_SPEED),
            from(Question.SPEEDS),
            combination -> combination
                    .gearTrain()
                    .then(train -> maximum(combination)
                            .then(maximum -> radius(combination)
                                    .map(radius ->
                                            train.top().speedAt(maximum, radius).si()))));

    private static final Measure SHAFT_SPEED_FAST = Measure.of(
            "shaftSpeedFast",
            "shaft speed at 100 mph",
            Better.LOWER,
            ROTATION,
            from(Question.SPEEDS),
            combination -> combination
                    .gearTrain()
                    .then(train -> radius(combination).map(radius -> shaftAt(train.top(), radius))));

    private static final Measure SHAFT_SPEED_GEARED = Measure.of(
            "shaftSpeedGeared",
            "shaft speed at maximum engine speed",
            Better.LOWER,
            ROTATION,
            from(Question.SPEEDS),
            combination -> combination
                    .gearTrain()
                    .then(train -> maximum(combination)
                            .map(maximum ->
                                    train.top().driveshaftSpeedAt(maximum).si())));

    /** Driveshaft speed at 100 mph, or at the gearing limit if that comes first. */
    public static final Measure SHAFT_SPEED =
            Measure.least("shaftSpeed", "shaft speed", Better.LOWER, List.of(SHAFT_SPEED_FAST, SHAFT_SPEED_GEARED));

    /** That speed of the rear driveshaft over its critical speed. */
    public static final Measure CRITICAL_SHARE = Measure.least(
            "criticalShare",
            "share of critical speed",
            Better.LOWER,
            List.of(
                    shareOfCritical("criticalShareFast", SHAFT_SPEED_FAST),
                    shareOfCritical("criticalShareGeared", SHAFT_SPEED_GEARED)));

    /** What the speedometer shows of the true speed. */
    public static final Measure SPEEDOMETER = Measure.of(
            "speedometer",
            "speedometer",
            Better.NEITHER,
            Scale.percent(1),
            from(Question.SPEEDOMETER),
            combination -> SpeedometerAnswer.of(combination)
                    .map(answer -> answer.readings().get(0).shown().si()
                            / answer.readings().get(0).actual().si()));

    /** The engine's greatest torque. */
    public static final Measure PEAK_TORQUE = Measure.of(
            "peakTorque",
            "peak torque",
            Better.HIGHER,
            Scale.of(Torque.KIND, Display.TORQUE),
            from(Question.ENGINE),
            combination -> EngineAnswer.of(combination)
                    .then(EngineAnswer::peakTorque)
                    .map(point -> point.torque().si()));

    /** The engine's greatest power. */
    public static final Measure PEAK_POWER = Measure.of(
            "peakPower",
            "peak power",
            Better.HIGHER,
            Scale.of(Power.KIND, Display.POWER),
            from(Question.ENGINE),
            combination -> EngineAnswer.of(combination)
                    .then(EngineAnswer::peakPower)
                    .map(point -> point.power().si()));

    /** The fuel that the engine burns where its power is greatest, by volume. */
    public static final Measure FUEL_FLOW = Measure.of(
            "fuelFlow",
            "fuel flow",
            Better.LOWER,
            Scale.of(VolumeFlow.KIND, Display.VOLUME_FLOW),
            combination -> new MeasureGround(SupplyAnswer.peakDemandAssumptions(combination), FuelCautions.all()),
            combination -> SupplyAnswer.peakDemand(combination)
                    .map(demand -> demand.volume().si()));

    /** The most fuel that the supply delivers over what the engine burns at its greatest power. */
    public static final Measure FUEL_MARGIN = ReserveMeasures.fuel();

    /** The engine power at which the fuel supply runs out. */
    public static final Measure SUPPORTED_POWER = ReserveMeasures.power();

    /** The rating of the weakest part over the greatest torque that it sees. */
    public static final Measure LOAD_MARGIN = ReserveMeasures.load();

    /** The critical speed of the rear driveshaft. */
    public static final Measure CRITICAL_SPEED = LineMeasures.critical(CRITICAL);

    /** The greatest operating angle of the rear driveshaft's joints. */
    public static final Measure JOINT_ANGLE = LineMeasures.jointAngle();

    /** The equivalent residual angle of the rear driveshaft. */
    public static final Measure RESIDUAL_ANGLE = LineMeasures.residual();

    /** The overall diameter of the tire. */
    public static final Measure TIRE_DIAMETER = Measure.of(
            "tireDiameter",
            "tire diameter",
            Better.NEITHER,
            Scale.of(Length.KIND, Display.DIMENSION),
            from(Question.TIRE),
            combination -> TireAnswer.of(combination)
                    .then(TireAnswer::overallDiameter)
                    .map(overall -> overall.diameter().si()));

    private static final List<Measure> FIXED = List.of(
            CRAWL_RATIO,
            CRAWL_SPEED,
            WHEEL_TORQUE,
            GEARED_SPEED,
            SHAFT_SPEED,
            CRITICAL_SPEED,
            CRITICAL_SHARE,
            JOINT_ANGLE,
            RESIDUAL_ANGLE,
            LOAD_MARGIN,
            SPEEDOMETER,
            PEAK_TORQUE,
            PEAK_POWER,
            FUEL_FLOW,
            FUEL_MARGIN,
            SUPPORTED_POWER,
            TIRE_DIAMETER);

    private Measures() {}

    private static Function<Combination, MeasureGround> from(Question question) {
        return combination -> MeasureGround.of(question.of(combination));
    }

    private static Outcome<Length> radius(Combination combination) {
        return combination.needTire().then(Tire::rolling).map(RollingCircumference::radius);
    }

    private static Outcome<AngularSpeed> maximum(Combination combination) {
        return combination.needEngine().map(Engine::maximumSpeed);
    }

    private static Outcome<AngularSpeed> idle(Combination combination) {
        return combination
                .needEngine()
                .then(engine -> Outcome.of(engine.idle(), "the engine's idle speed is not given"));
    }

    private static Measure shareOfCritical(String key, Measure shaftSpeed) {
        return Measure.of(
                key,
                "share of critical speed, " + shaftSpeed.word(),
                Better.LOWER,
                Scale.percent(1),
                combination ->
                        shaftSpeed.ground(combination).and(MeasureGround.of(CriticalSpeedAnswer.of(combination))),
                combination -> shaftSpeed
                        .of(combination)
                        .then(speed -> CRITICAL.of(combination).map(critical -> speed / critical.si())));
    }

    private static double shaftAt(DriveGear gear, Length radius) {
        return gear.driveshaftSpeedAt(gear.engineSpeedAt(FAST, radius)).si();
    }

    /**
     * Makes the measure of engine speed at a road speed, in top gear of high range, nothing slipping.
     *
     * @param speed the road speed, greater than zero
     * @return the measure
     * @throws drivetrain.refusal.RefusedException if the speed is not greater than zero
     */
    public static Measure engineSpeedAt(Speed speed) {
        speed.requirePositive("road speed");
        String shown = shown(speed);
        String key = "rpmAt" + shown.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
        return Measure.of(
                key,
                "rpm at " + shown,
                Better.LOWER,
                ROTATION,
                from(Question.SPEEDS),
                combination -> combination
                        .gearTrain()
                        .then(train -> radius(combination)
                                .map(radius ->
                                        train.top().engineSpeedAt(speed, radius).si())));
    }

    /** A speed as people say it: without decimals where there are none, in the unit in which it has fewest. */
    private static String shown(Speed speed) {
        for (var unit : List.of(Speed.MILE_PER_HOUR, Speed.KILOMETER_PER_HOUR)) {
            double number = speed.in(unit);
            if (Math.abs(number - Math.rint(number)) < 1e-9) {
                return speed.format(unit, 0);
            }
        }
        return speed.format(Speed.MILE_PER_HOUR, 1);
    }

    /**
     * Lists the measures that need no road speed.
     *
     * @return the measures, in the order in which they are shown
     */
    public static List<Measure> fixed() {
        return FIXED;
    }

    /**
     * Lists the measures by which a package is compared when none are named.
     *
     * @param cruise the road speed of the order
     * @return engine speed at that speed, if there is one, and every measure that needs none
     */
    public static List<Measure> all(Optional<Speed> cruise) {
        List<Measure> all = new ArrayList<>();
        cruise.ifPresent(speed -> all.add(engineSpeedAt(speed)));
        all.addAll(FIXED);
        return all;
    }

    /**
     * Lists the measures by which a package is compared when none are named.
     *
     * @param combination the package, whose order may name a cruise speed
     * @return the measures
     */
    public static List<Measure> all(Combination combination) {
        return all(combination.cruise());
    }
}
