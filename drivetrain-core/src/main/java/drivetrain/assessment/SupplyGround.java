package drivetrain.assessment;

import drivetrain.atmosphere.StandardAtmosphere;
import drivetrain.combination.Combination;
import drivetrain.combination.FuelParts;
import drivetrain.engine.Aspiration;
import drivetrain.engine.Engine;
import drivetrain.engine.Ignition;
import drivetrain.engine.OperatingPoint;
import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.fuel.Consumption;
import drivetrain.fuel.EngineKind;
import drivetrain.fuel.FlowingFuel;
import drivetrain.fuel.FuelDemand;
import drivetrain.fuel.FuelHouse;
import drivetrain.fuel.FuelSupply;
import drivetrain.fuel.FuelSystem;
import drivetrain.fuel.Regulator;
import drivetrain.fuel.Suction;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Length;
import drivetrain.quantity.Power;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Voltage;
import java.util.ArrayList;
import java.util.List;

/**
 * What questions about the fuel have in common: the engine's demand and the conditions, with what had to be assumed where the order is silent.
 *
 * @param engine the engine
 * @param peak where its power is greatest
 * @param fuel the fuel at its temperature
 * @param system the set-up
 * @param consumption the full-load consumption
 * @param boost the pressure in the manifold above the air outside
 * @param margin the flow to spare
 * @param marginSource where the margin comes from
 * @param duty how long the injectors may be open
 * @param dutySource where the duty comes from
 * @param house the limits of the shop
 * @param assumptions what was assumed
 */
record SupplyGround(
        Engine engine,
        OperatingPoint peak,
        FlowingFuel fuel,
        FuelSystem system,
        Consumption consumption,
        Pressure boost,
        double margin,
        Source marginSource,
        double duty,
        Source dutySource,
        FuelHouse house,
        List<Assumption> assumptions) {

    private static final Temperature USUAL_TEMPERATURE = Temperature.ofCelsius(15.0);
    private static final Source ORDER = Source.given("the order's fuel system");
    private static final Source SILENT = Source.commonPractice("what the order does not say");

    SupplyGround {
        assumptions = List.copyOf(assumptions);
    }

    static Outcome<SupplyGround> of(Combination combination) {
        FuelParts parts = combination.fuelParts();
        return combination
                .needEngine()
                .then(engine -> parts.needFuel()
                        .then(fuel -> engine.peakPower()
                                .then(peak -> boost(engine, parts)
                                        .map(boost -> ground(
                                                engine,
                                                peak,
                                                new FlowingFuel(fuel, temperature(parts)),
                                                parts,
                                                boost,
                                                combination.limits().fuel())))));
    }

    /** Fuel is no colder than the air that the order names, where its own temperature is not known. */
    static Temperature temperature(FuelParts parts) {
        return parts.systemOrUnknown()
                .temperature()
                .or(() -> parts.air().temperature())
                .orElse(USUAL_TEMPERATURE);
    }

    /** Boost matters where something is measured against the manifold. */
    private static Outcome<Pressure> boost(Engine engine, FuelParts parts) {
        FuelSystem system = parts.systemOrUnknown();
        Pressure none = Pressure.ofPascals(0.0);
        boolean matters = parts.injectors().isPresent()
                || system.regulator().filter(Regulator::referenced).isPresent();
        if (engine.aspiration() == Aspiration.NATURAL || !matters) {
            return Outcome.of(system.boost().orElse(none));
        }
        return Outcome.of(
                system.boost(),
                "the engine is " + engine.aspiration().label()
                        + " and the fuel system names no boost; add it, such as boost 8 psi");
    }

    private static SupplyGround ground(
            Engine engine, OperatingPoint peak, FlowingFuel fuel, FuelParts parts, Pressure boost, FuelHouse house) {
        FuelSystem system = parts.systemOrUnknown();
        List<Assumption> assumed = new ArrayList<>();
        if (system.temperature().isEmpty()) {
            assumed.add(Assumption.flagged(
                    "temperature of the fuel",
                    "the fuel is at " + fuel.temperature().format(Temperature.CELSIUS, 0)
                            + (parts.air().temperature().isPresent() ? ", as the air is" : "")
                            + ", because the fuel system does not say; hot fuel is thinner and boils",
                    SILENT));
        }
        parts.elevationAssumption().ifPresent(assumed::add);
        Consumption consumption = system.consumption()
                .map(Consumption::of)
                .orElseGet(() -> Consumption.full(kind(engine, system), fuel.fuel()));
        assumed.addAll(consumption.assumptions());
        blower(engine, system, assumed);
        Source marginSource = system.margin().isPresent() ? ORDER : house.source(FuelHouse.Rule.MARGIN);
        double margin = system.margin().orElse(house.of(FuelHouse.Rule.MARGIN).value());
        assumed.add(Assumption.of("margin", "the supply is to have " + percent(margin) + " to spare", marginSource));
        Source dutySource = system.duty().isPresent() ? ORDER : house.source(FuelHouse.Rule.DUTY);
        double duty = system.duty().orElse(house.of(FuelHouse.Rule.DUTY).value());
        if (parts.injectors().isPresent()) {
            assumed.add(Assumption.of(
                    "injector duty", "the injectors may be open for " + percent(duty) + " of the time", dutySource));
        }
        return new SupplyGround(
                engine, peak, fuel, system, consumption, boost, margin, marginSource, duty, dutySource, house, assumed);
    }

    /** A driven supercharger's power is in the consumption, unless its power is given: then the consumption is that of the engine without it. */
    private static void blower(Engine engine, FuelSystem system, List<Assumption> assumed) {
        if (engine.aspiration() == Aspiration.SUPERCHARGED
                && system.blower().isEmpty()
                && system.consumption().isEmpty()) {
            assumed.add(Assumption.of(
                    "power of the supercharger",
                    "the power that drives the supercharger is in the specific consumption and not counted again",
                    Source.commonPractice("consumption windows of supercharged engines")));
        } else if (system.blower().isPresent()) {
            assumed.add(Assumption.of(
                    "power of the supercharger",
                    "the power that drives the supercharger is burned for on top of the power at the crank, at the consumption of an engine without it",
                    ORDER));
        }
    }

    private static String percent(double fraction) {
        return DecimalText.shortest(Math.rint(1000.0 * fraction) / 10.0) + " %";
    }

    static EngineKind kind(Engine engine, FuelSystem system) {
        if (engine.ignition() == Ignition.COMPRESSION) {
            return EngineKind.DIESEL;
        }
        return switch (engine.aspiration()) {
            case NATURAL -> EngineKind.SPARK_NATURAL;
            case TURBOCHARGED -> EngineKind.SPARK_TURBOCHARGED;
            case SUPERCHARGED -> system.blower().isPresent() ? EngineKind.SPARK_NATURAL : EngineKind.SPARK_SUPERCHARGED;
        };
    }

    Power blower() {
        return system.blower().orElse(Power.ofWatts(0.0));
    }

    /** What the engine burns at a power at the crank. */
    FuelDemand demand(Power crank) {
        return new FuelDemand(crank.plus(blower()), consumption.most(), fuel.density());
    }

    FuelDemand peakDemand() {
        return demand(peak.power());
    }

    /** The supply at a voltage, or what is missing of it. */
    Outcome<FuelSupply> supply(FuelParts parts, Voltage voltage) {
        return parts.needPump()
                .then(pump -> parts.needFeedLine()
                        .then(line -> regulator()
                                .map(regulator -> new FuelSupply(
                                        pump,
                                        line,
                                        regulator,
                                        fuel,
                                        system.lift().orElse(Length.ofMeters(0.0)),
                                        boost,
                                        voltage,
                                        system.wire()))));
    }

    Outcome<Regulator> regulator() {
        return Outcome.of(
                system.regulator(),
                "the fuel system names no regulator; type it, such as fuel system return 43.5 psi, 13.8 V");
    }

    Outcome<Voltage> voltage() {
        return Outcome.of(
                system.worstVoltage(),
                "the fuel system names no voltage; add it, such as 13.8 V, or ask at one, such as supply 12.5 V");
    }

    /** The suction side, or why it is not looked at. */
    Outcome<Suction> suction(FuelParts parts) {
        return Outcome.of(
                        system.temperature(),
                        "the fuel system names no fuel temperature; add it, such as fuel at 40 degC")
                .then(known -> parts.needElevation())
                .then(elevation -> parts.needFeedLine()
                        .then(line -> suctionLift(line.suction().isEmpty())
                                .then(lift -> Suction.of(
                                        line,
                                        fuel,
                                        lift,
                                        StandardAtmosphere.at(elevation).pressure()))));
    }

    private Outcome<Length> suctionLift(boolean inTank) {
        return inTank && system.suctionLift().isEmpty()
                ? Outcome.of(Length.ofMeters(0.0))
                : Outcome.of(
                        system.suctionLift(),
                        "the pump sits outside the tank and the fuel system names no suction lift; add it, such as suction-lift 0.2 m");
    }

    /** What was assumed, but for one subject that a question has nothing to do with. */
    List<Assumption> without(String subject) {
        return assumptions.stream()
                .filter(assumption -> !assumption.subject().equals(subject))
                .toList();
    }

    List<Assumption> withLift() {
        List<Assumption> all = new ArrayList<>(assumptions);
        if (system.lift().isEmpty()) {
            all.add(Assumption.flagged(
                    "lift",
                    "the rail is as high as the fuel in the tank, because the fuel system does not say",
                    SILENT));
        }
        return all;
    }
}
