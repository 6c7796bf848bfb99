package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.gearing.Converter;
import drivetrain.gearing.ConverterMatch;
import drivetrain.gearing.Coupling;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.Range;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Force;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;
import drivetrain.road.RoadCautions;
import drivetrain.road.RoadLoad;
import drivetrain.tire.RollingCircumference;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * The torque converter behind the engine: stall, heat, creep, and the engine speed of a cruise with it open.
 *
 * @param converter the converter
 * @param match the converter matched with the engine
 * @param creepForce the force at the wheels in first gear, high range, with the engine at idle and the vehicle held; or what is missing
 * @param creepSpeed the speed at which it then creeps on the level; or what is missing
 * @param cruise the state at the order's cruise speed in top gear with the converter open, or what is missing
 * @param assumptions what the figures rest on
 */
public record ConverterAnswer(
        Converter converter,
        ConverterMatch match,
        Outcome<Force> creepForce,
        Outcome<Speed> creepSpeed,
        Outcome<ConverterMatch.Point> cruise,
        List<Assumption> assumptions)
        implements Answer {

    /** Copies the list. */
    public ConverterAnswer {
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Asks about the converter of the package.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing
     */
    public static Outcome<ConverterAnswer> of(Combination combination) {
        return combination.gearTrain().then(train -> {
            Coupling coupling = train.transmission().coupling();
            return coupling instanceof Converter converter
                    ? of(combination, converter)
                    : Outcome.notEvaluated("a clutch and no converter is behind the engine");
        });
    }

    /**
     * Asks about another converter in the place of the package's own.
     *
     * @param combination the drivetrain package
     * @param converter the converter
     * @return the answer, or what is missing
     */
    public static Outcome<ConverterAnswer> of(Combination combination, Converter converter) {
        return combination
                .gearTrain()
                .then(train -> FullLoadEngine.of(combination)
                        .then(engine -> GearPulls.match(converter, engine)
                                .map(match -> answer(combination, train, engine, converter, match))));
    }

    private static ConverterAnswer answer(
            Combination combination,
            GearTrain train,
            FullLoadEngine engine,
            Converter converter,
            ConverterMatch match) {
        Outcome<Length> radius = Rolling.of(combination).map(RollingCircumference::radius);
        Outcome<AngularSpeed> idle = Idle.of(combination);
        DriveGear first = train.gear(1, Range.HIGH).orElseThrow();
        LinkedHashSet<Assumption> assumptions = new LinkedHashSet<>(match.assumptions());
        assumptions.addAll(engine.assumptions());
        assumptions.addAll(first.efficiencyAssumptions());
        return new ConverterAnswer(
                converter,
                match,
                idle.then(slow -> radius.map(known -> force(first, match.creepTorque(slow), known))),
                idle.then(slow -> radius.then(known -> creepSpeed(combination, first, match, slow, known))),
                cruise(combination, train, match),
                List.copyOf(assumptions));
    }

    private static Force force(DriveGear gear, Torque input, Length radius) {
        return Force.ofNewtons(gear.wheelTorque(input).si() / radius.si());
    }

    private static Outcome<Speed> creepSpeed(
            Combination combination, DriveGear first, ConverterMatch match, AngularSpeed idle, Length radius) {
        return RoadGround.load(combination).map(load -> {
            Force resistance = load.total(Speed.ofMetersPerSecond(0.0));
            Torque input =
                    Torque.ofNewtonMeters(resistance.si() * radius.si() / (first.totalRatio() * first.efficiency()));
            return first.speedAt(match.creepSpeed(idle, input), radius);
        });
    }

    private static Outcome<ConverterMatch.Point> cruise(
            Combination combination, GearTrain train, ConverterMatch match) {
        return Outcome.of(combination.cruise(), "the order names no cruise speed")
                .then(speed -> RoadGround.load(combination)
                        .then(load -> Rolling.of(combination)
                                .then(rolling -> state(load, speed, train.top(), match, rolling.radius()))));
    }

    private static Outcome<ConverterMatch.Point> state(
            RoadLoad load, Speed speed, DriveGear top, ConverterMatch match, Length radius) {
        AngularSpeed turbine = top.engineSpeedAt(speed, radius);
        Torque torque = load.powerAtWheels(speed).dividedBy(top.efficiency()).torqueAt(turbine);
        return match.atLoad(turbine, torque);
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Caution> cautions() {
        return RoadCautions.stall();
    }

    @Override
    public Working working() {
        Working.Builder working =
                Working.of("torque converter behind the engine").from(match.working());
        creepForce
                .value()
                .ifPresent(force -> working.step(
                        "force at the wheels at idle, held",
                        "F = m (n_idle / K)^2 x ratio x efficiency / r",
                        Figure.of(force, Display.FORCE)));
        cruise.value()
                .ifPresent(point -> working.step(
                        "engine speed at cruise, converter open",
                        "n with m(nu) (n / K(nu))^2 = torque of the road load, nu = turbine speed / n",
                        Figure.of(point.pumpSpeed(), Display.ROTATION)));
        return working.build();
    }
}
