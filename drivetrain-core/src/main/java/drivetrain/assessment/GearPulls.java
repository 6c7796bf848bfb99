package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.gearing.Converter;
import drivetrain.gearing.ConverterMatch;
import drivetrain.gearing.Coupling;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Force;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;
import drivetrain.road.ForceCurve;
import drivetrain.tire.RollingCircumference;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The driving force at full load in every forward gear.
 *
 * @param train the gear train
 * @param engine the engine at full load
 * @param rolling the rolling circumference
 * @param match the converter behind the engine, where there is one and it is described
 * @param gears the gears with their forces, shortest first
 */
record GearPulls(
        GearTrain train,
        FullLoadEngine engine,
        RollingCircumference rolling,
        Optional<ConverterMatch> match,
        List<Gear> gears) {

    private static final Assumption SLIPPING_CLUTCH = Assumption.of(
            "clutch at the start",
            "below the engine's slowest full-load speed the clutch slips and the force of that speed is held",
            Source.commonPractice("starting from rest by the clutch"));
    private static final Assumption NO_CURVE = Assumption.flagged(
            "converter",
            "the converter is not described beyond its stall torque ratio: it is taken as locked and its multiplication from rest is not counted",
            Source.derived("nothing is assumed of a converter's capacity"));
    private static final Assumption OPEN_OR_LOCKED = Assumption.of(
            "converter",
            "the converter multiplies torque from rest and locks wherever that pulls harder",
            Source.commonPractice("lock-up as a transmission's control can do it at full load"));
    private static final Assumption OPEN =
            Assumption.of("converter", "the converter never locks", Source.derived("it has no lock-up"));

    /**
     * One gear.
     *
     * @param gear the gear
     * @param curve its driving force
     */
    record Gear(DriveGear gear, ForceCurve curve) {}

    /** Copies the list. */
    GearPulls {
        gears = List.copyOf(gears);
    }

    static Outcome<GearPulls> of(Combination combination) {
        return combination
                .gearTrain()
                .then(train -> Rolling.of(combination)
                        .then(rolling -> FullLoadEngine.of(combination).map(engine -> of(train, rolling, engine))));
    }

    /** The converter behind the engine, or what is missing. */
    static Outcome<ConverterMatch> match(Coupling coupling, FullLoadEngine engine) {
        if (!(coupling instanceof Converter converter)) {
            return Outcome.notEvaluated("a clutch and no converter is behind the engine");
        }
        return ConverterMatch.of(
                converter,
                new ConverterMatch.FullLoad(
                        engine.band().lowest(), engine.band().highest(), engine::torqueAt, engine::ratedAt));
    }

    private static GearPulls of(GearTrain train, RollingCircumference rolling, FullLoadEngine engine) {
        Coupling coupling = train.transmission().coupling();
        Optional<ConverterMatch> match = match(coupling, engine).value();
        boolean locks = !(coupling instanceof Converter converter) || converter.lockUp() || match.isEmpty();
        List<Gear> gears = new ArrayList<>();
        for (DriveGear gear : train.byTotalRatio()) {
            Way way = new Way(gear.totalRatio(), gear.efficiency(), rolling.radius());
            ForceCurve curve = match.map(known -> converterCurve(gear, way, engine, known, locks))
                    .orElseGet(() -> lockedCurve(gear, way, engine));
            gears.add(new Gear(gear, curve));
        }
        return new GearPulls(train, engine, rolling, match, gears);
    }

    /** From the transmission's input to the ground. */
    private record Way(double ratio, double efficiency, Length radius) {
        Speed road(AngularSpeed input) {
            return Speed.ofMetersPerSecond(input.si() / ratio * radius.si());
        }

        AngularSpeed input(Speed road) {
            return AngularSpeed.ofRadiansPerSecond(road.si() / radius.si() * ratio);
        }

        double force(double inputTorque) {
            return inputTorque * ratio * efficiency / radius.si();
        }
    }

    private static ForceCurve lockedCurve(DriveGear gear, Way way, FullLoadEngine engine) {
        Function<Speed, Force> law = speed ->
                Force.ofNewtons(way.force(engine.torqueAt(way.input(speed)).si()));
        return ForceCurve.of(
                gear.label(),
                way.road(engine.band().lowest()),
                way.road(engine.band().highest()),
                law);
    }

    /** The torque at the transmission's input at a speed there, which is that of the turbine. */
    Torque inputTorqueAt(AngularSpeed input) {
        return isOpenAt(input) ? match.orElseThrow().turbineTorqueAt(input) : engine.torqueAt(input);
    }

    /** Tells whether the converter is open at a speed of the transmission's input. */
    boolean isOpenAt(AngularSpeed input) {
        if (match.isEmpty() || input.isGreaterThan(match.get().fastestTurbine())) {
            return false;
        }
        boolean locks = train.transmission().coupling() instanceof Converter converter && converter.lockUp();
        boolean canLock = locks && !input.isLessThan(engine.band().lowest());
        return !canLock || match.get().turbineTorqueAt(input).isGreaterThan(engine.torqueAt(input));
    }

    private static ForceCurve converterCurve(
            DriveGear gear, Way way, FullLoadEngine engine, ConverterMatch match, boolean locks) {
        AngularSpeed lowest = engine.band().lowest();
        AngularSpeed fastest = match.fastestTurbine();
        Function<Speed, Force> law = speed -> {
            AngularSpeed input = way.input(speed);
            double open = input.isGreaterThan(fastest)
                    ? 0.0
                    : match.turbineTorqueAt(input).si();
            boolean canLock = locks && !input.isLessThan(lowest);
            double locked = canLock ? engine.torqueAt(input).si() : 0.0;
            return Force.ofNewtons(way.force(Math.max(open, locked)));
        };
        AngularSpeed highest = locks ? engine.band().highest() : fastest;
        return ForceCurve.of(gear.label(), Speed.ofMetersPerSecond(0.0), way.road(highest), law);
    }

    List<ForceCurve> curves() {
        return gears.stream().map(Gear::curve).toList();
    }

    /** What the forces rest on, each once. */
    List<Assumption> assumptions() {
        Set<Assumption> all = new LinkedHashSet<>(engine.assumptions());
        all.addAll(rolling.assumptions());
        train.rear().decimalAssumption().ifPresent(all::add);
        all.addAll(couplingAssumptions());
        gears.forEach(gear -> all.addAll(gear.gear().efficiencyAssumptions()));
        return List.copyOf(all);
    }

    private List<Assumption> couplingAssumptions() {
        if (!(train.transmission().coupling() instanceof Converter converter)) {
            return List.of();
        }
        if (match.isEmpty()) {
            return List.of(NO_CURVE);
        }
        List<Assumption> all = new ArrayList<>(match.get().assumptions());
        all.add(converter.lockUp() ? OPEN_OR_LOCKED : OPEN);
        return all;
    }

    /** What a run from rest rests on besides. */
    List<Assumption> startAssumptions() {
        return match.isPresent() ? List.of() : List.of(SLIPPING_CLUTCH);
    }
}
