package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.FuelParts;
import drivetrain.engine.Engine;
import drivetrain.engine.OperatingPoint;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.fuel.FuelCautions;
import drivetrain.fuel.FuelChecks;
import drivetrain.fuel.FuelDemand;
import drivetrain.fuel.FuelSupply;
import drivetrain.fuel.InjectorUse;
import drivetrain.fuel.RunOut;
import drivetrain.fuel.Suction;
import drivetrain.fuel.SupplyLimits;
import drivetrain.fuel.SupplyPoint;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Power;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether the fuel supply keeps up with the engine, what runs out first and at what power.
 *
 * @param engine the engine
 * @param peak where its power is greatest
 * @param demand what it burns there
 * @param supply the supply at the voltage
 * @param capacity the most that it delivers while the regulator holds, or why that is not known
 * @param atPeak the supply while the engine burns its most, or why that is not known
 * @param injectors the injectors while the engine burns its most, or why there is nothing to say of them
 * @param suction the suction side, or why it is not looked at
 * @param parts what each part of the supply allows
 * @param margin the flow to spare that is asked for
 * @param rows demand and delivery over the engine speed
 * @param assumptions what the answer rests on
 * @param findings the checks
 */
public record SupplyAnswer(
        Engine engine,
        OperatingPoint peak,
        FuelDemand demand,
        FuelSupply supply,
        Outcome<SupplyPoint> capacity,
        Outcome<SupplyPoint> atPeak,
        Outcome<InjectorUse> injectors,
        Outcome<Suction> suction,
        List<RunOut> parts,
        double margin,
        List<Row> rows,
        List<Assumption> assumptions,
        List<Finding> findings)
        implements Answer {

    private static final int ROWS = 8;

    /**
     * Demand at one engine speed.
     *
     * @param speed the engine speed
     * @param power the power there
     * @param demand what the engine burns there
     */
    public record Row(AngularSpeed speed, Power power, VolumeFlow demand) {}

    /** Copies the lists. */
    public SupplyAnswer {
        parts = List.copyOf(parts);
        rows = List.copyOf(rows);
        assumptions = List.copyOf(assumptions);
        findings = List.copyOf(findings);
    }

    /**
     * Asks at the lowest voltage that the fuel system names.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing and what to type
     */
    public static Outcome<SupplyAnswer> of(Combination combination) {
        return SupplyGround.of(combination)
                .then(ground -> ground.voltage().then(voltage -> answer(combination, ground, voltage)));
    }

    /**
     * Asks at a voltage of the supply.
     *
     * @param combination the drivetrain package
     * @param voltage the voltage, 5 to 60 V
     * @return the answer, or what is missing and what to type
     */
    public static Outcome<SupplyAnswer> at(Combination combination, Voltage voltage) {
        return SupplyGround.of(combination).then(ground -> answer(combination, ground, voltage));
    }

    /**
     * Asks only for the fuel that the engine burns where its power is greatest.
     *
     * @param combination the drivetrain package, of which pump and lines may be missing
     * @return the demand, or what is missing and what to type
     */
    public static Outcome<FuelDemand> peakDemand(Combination combination) {
        return SupplyGround.of(combination).map(SupplyGround::peakDemand);
    }

    /**
     * Asks only for the most that the supply delivers at the lowest voltage that the fuel system names.
     *
     * @param combination the drivetrain package
     * @return the supply at that flow, or what is missing and what to type
     */
    public static Outcome<SupplyPoint> capacity(Combination combination) {
        return SupplyGround.of(combination)
                .then(ground -> ground.voltage()
                        .then(voltage -> ground.supply(combination.fuelParts(), voltage))
                        .then(FuelSupply::capacity));
    }

    /**
     * Returns what that demand rests on.
     *
     * @param combination the drivetrain package
     * @return the assumptions; empty where there is no demand
     */
    public static List<Assumption> peakDemandAssumptions(Combination combination) {
        return SupplyGround.of(combination)
                .value()
                .map(SupplyGround::assumptions)
                .orElse(List.of());
    }

    private static Outcome<SupplyAnswer> answer(Combination combination, SupplyGround ground, Voltage voltage) {
        FuelParts parts = combination.fuelParts();
        return ground.supply(parts, voltage).map(supply -> answer(parts, ground, supply));
    }

    private static SupplyAnswer answer(FuelParts parts, SupplyGround ground, FuelSupply supply) {
        FuelDemand demand = ground.peakDemand();
        Outcome<SupplyPoint> capacity = supply.capacity();
        Outcome<SupplyPoint> atPeak = supply.at(demand.volume(), capacity);
        Outcome<Suction> suction = ground.suction(parts);
        Outcome<InjectorUse> use = parts.needInjectors()
                .then(fitted -> atPeak.map(point -> new InjectorUse(
                        fitted,
                        demand.mass(),
                        point.rail().minus(ground.boost()),
                        ground.fuel().density())));
        SupplyLimits limits = new SupplyLimits(
                supply,
                suction,
                parts.needInjectors(),
                ground.duty(),
                ground.consumption().most(),
                ground.blower());
        return new SupplyAnswer(
                ground.engine(),
                ground.peak(),
                demand,
                supply,
                capacity,
                atPeak,
                use,
                suction,
                limits.parts(capacity),
                ground.margin(),
                rows(ground),
                assumptions(ground, supply, capacity, use, suction),
                findings(parts, ground, supply, demand, capacity, use, suction));
    }

    private static List<Row> rows(SupplyGround ground) {
        List<Row> rows = new ArrayList<>();
        ground.engine().band().ifPresent(band -> {
            for (int i = 0; i <= ROWS; i++) {
                AngularSpeed speed = band.lowest()
                        .times(1.0 - (double) i / ROWS)
                        .plus(band.highest().times((double) i / ROWS));
                ground.engine()
                        .torqueAt(i == ROWS ? band.highest() : speed)
                        .value()
                        .map(torque -> torque.at(speed))
                        .filter(power -> power.si() > 0.0)
                        .ifPresent(power -> rows.add(
                                new Row(speed, power, ground.demand(power).volume())));
            }
        });
        return rows;
    }

    private static List<Assumption> assumptions(
            SupplyGround ground,
            FuelSupply supply,
            Outcome<SupplyPoint> capacity,
            Outcome<InjectorUse> use,
            Outcome<Suction> suction) {
        List<Assumption> all = new ArrayList<>(ground.withLift());
        all.addAll(ground.engine().assumptionsAt(ground.peak().speed()));
        capacity.value()
                .ifPresentOrElse(
                        point -> all.addAll(supply.assumptions(point)),
                        () -> all.addAll(ground.fuel().fuel().assumptions()));
        use.value().ifPresent(fitted -> all.addAll(fitted.injectors().assumptions()));
        suction.value().ifPresent(side -> all.addAll(side.assumptions()));
        return all.stream().distinct().toList();
    }

    private static List<Finding> findings(
            FuelParts parts,
            SupplyGround ground,
            FuelSupply supply,
            FuelDemand demand,
            Outcome<SupplyPoint> capacity,
            Outcome<InjectorUse> use,
            Outcome<Suction> suction) {
        List<Finding> all = new ArrayList<>();
        Outcome<VolumeFlow> delivered = capacity.map(SupplyPoint::flow);
        all.add(FuelChecks.supply(
                supply.voltage(), delivered, demand.volume(), ground.margin(), ground.marginSource()));
        if (parts.injectors().isPresent()) {
            all.add(FuelChecks.duty(use.then(InjectorUse::duty), ground.duty(), ground.dutySource()));
        }
        capacity.value().ifPresent(point -> all.addAll(FuelChecks.lines(supply, point, ground.house())));
        parts.returnLine()
                .ifPresent(back -> all.add(FuelChecks.returnLine(supply, back.item(), delivered, ground.house())));
        all.add(FuelChecks.suction(suction, delivered, ground.house()));
        return all;
    }

    /**
     * Returns what runs out first.
     *
     * @return the part with the least power; empty if no power is known
     */
    public Optional<RunOut> first() {
        return RunOut.first(parts);
    }

    /**
     * Tells whether the lines are what the pump runs out by: it would do without their losses.
     *
     * @return true if the pump alone would give the demand with its margin and through the lines does not give the demand
     */
    public boolean isLimitedByLines() {
        boolean alone = supply.pumpAlone()
                .value()
                .filter(flow -> !flow.isLessThan(demand.volume().times(1.0 + margin)))
                .isPresent();
        return alone
                && capacity.value()
                        .filter(point -> point.flow().isLessThan(demand.volume()))
                        .isPresent();
    }

    @Override
    public List<Caution> cautions() {
        return FuelCautions.all();
    }

    @Override
    public Working working() {
        Working.Builder working =
                Working.of("fuel supply at " + supply.voltage().format(Voltage.VOLT, 1));
        engine.peakPowerWorking().value().ifPresent(working::from);
        working.from(demand.working());
        capacity.value().ifPresent(point -> working.from(supply.working(point)));
        injectors.value().ifPresent(use -> working.from(use.working()));
        suction.value()
                .ifPresent(side -> capacity.value().ifPresent(point -> working.from(side.working(point.flow()))));
        return working.build();
    }
}
