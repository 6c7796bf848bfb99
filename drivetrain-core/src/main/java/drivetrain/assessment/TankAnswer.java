package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.FuelParts;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.fuel.Consumption;
import drivetrain.fuel.FlowingFuel;
import drivetrain.fuel.Fuel;
import drivetrain.fuel.FuelCautions;
import drivetrain.fuel.FuelChecks;
import drivetrain.fuel.FuelDemand;
import drivetrain.fuel.FuelSystem;
import drivetrain.fuel.Recirculation;
import drivetrain.fuel.Tank;
import drivetrain.fuel.TankVapor;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Power;
import drivetrain.quantity.SpecificFuelConsumption;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Volume;
import drivetrain.quantity.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * The tank: how far it takes the vehicle, how much its fuel expands, how fast a return system warms it, and how much vapor it makes.
 *
 * @param tank the tank
 * @param fuel the fuel
 * @param range how far the usable fuel lasts at the cruise speed, or why that is not known
 * @param expansion the volume that a full tank's fuel gains up to the hottest temperature of the day, or why that is not known
 * @param warmingPerHour how fast the pumps warm a tank a quarter full, in K/h, or why that is not known
 * @param vapor the vapor of a day without driving, or why that is not known
 * @param assumptions what the answer rests on
 * @param findings the checks
 */
public record TankAnswer(
        Tank tank,
        Fuel fuel,
        Outcome<CruiseRange> range,
        Outcome<Volume> expansion,
        Outcome<Double> warmingPerHour,
        Outcome<Mass> vapor,
        List<Assumption> assumptions,
        List<Finding> findings)
        implements Answer {

    private static final double LOW_FILL = 0.25;

    /**
     * How far the usable fuel lasts at a steady speed.
     *
     * @param speed the road speed
     * @param power the power at the crank that it takes
     * @param least the flow at the least usual consumption
     * @param most the flow at the most usual consumption
     * @param burnable the fuel that can be burned
     */
    public record CruiseRange(Speed speed, Power power, VolumeFlow least, VolumeFlow most, Volume burnable) {

        /**
         * Returns how far the fuel lasts at the most usual consumption.
         *
         * @return the distance
         */
        public Length shortest() {
            return distance(most);
        }

        /**
         * Returns how far the fuel lasts at the least usual consumption.
         *
         * @return the distance
         */
        public Length longest() {
            return distance(least);
        }

        private Length distance(VolumeFlow flow) {
            return Length.ofMeters(
                    burnable.toCubicMeters() / flow.toCubicMetersPerSecond() * speed.toMetersPerSecond());
        }
    }

    /** Copies the lists. */
    public TankAnswer {
        assumptions = List.copyOf(assumptions);
        findings = List.copyOf(findings);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing
     */
    public static Outcome<TankAnswer> of(Combination combination) {
        return of(combination, CruisePower.of(combination).map(CruisePower::atCrank));
    }

    static Outcome<TankAnswer> of(Combination combination, Supplier<Outcome<SupplyAnswer>> supply) {
        return of(combination, CruisePower.of(combination).map(CruisePower::atCrank), supply);
    }

    /**
     * Asks with the power that the cruise takes.
     *
     * @param combination the drivetrain package
     * @param cruisePower the power at the crank at the order's cruise speed, or why it is not known
     * @return the answer, or what is missing
     */
    public static Outcome<TankAnswer> of(Combination combination, Outcome<Power> cruisePower) {
        return of(combination, cruisePower, () -> SupplyAnswer.of(combination));
    }

    private static Outcome<TankAnswer> of(
            Combination combination, Outcome<Power> cruisePower, Supplier<Outcome<SupplyAnswer>> supply) {
        FuelParts parts = combination.fuelParts();
        return parts.needTank()
                .then(tank -> parts.needFuel().map(fuel -> answer(combination, tank, fuel, cruisePower, supply.get())));
    }

    private static TankAnswer answer(
            Combination combination, Tank tank, Fuel fuel, Outcome<Power> cruisePower, Outcome<SupplyAnswer> supply) {
        FuelSystem system = combination.fuelParts().systemOrUnknown();
        List<Assumption> assumed = new ArrayList<>(fuel.assumptions());
        Outcome<Consumption> cruise =
                combination.needEngine().map(engine -> Consumption.cruise(SupplyGround.kind(engine, system), fuel));
        Outcome<CruiseRange> range = range(combination, tank, fuel, cruise, cruisePower);
        if (range.value().isPresent()) {
            cruise.value().ifPresent(window -> assumed.addAll(window.assumptions()));
        }
        Outcome<Mass> vapor = vapor(tank, fuel, combination.fuelParts());
        if (vapor.value().isPresent()) {
            combination.fuelParts().elevationAssumption().ifPresent(assumed::add);
            assumed.add(Assumption.flagged(
                    "vapor of a day",
                    "the vapor follows a model of many vehicles on a day without driving, with the tank standing "
                            + Math.round(100.0 * tank.fill().orElse(0.0)) + " % full",
                    TankVapor.source()));
        }
        Outcome<Double> warming = warming(combination, tank, fuel, supply);
        if (warming.value().isPresent()) {
            assumed.add(Assumption.of(
                    "warming of the fuel",
                    "all electric power of the pump stays in a tank a quarter full that gives no heat away",
                    Source.derived("heat balance of the tank")));
        }
        List<Finding> findings = new ArrayList<>();
        tank.canister()
                .ifPresent(
                        capacity -> vapor.value().ifPresent(mass -> findings.add(FuelChecks.canister(mass, capacity))));
        return new TankAnswer(
                tank,
                fuel,
                range,
                expansion(tank, fuel),
                warming,
                vapor,
                assumed.stream().distinct().toList(),
                findings);
    }

    private static Outcome<CruiseRange> range(
            Combination combination, Tank tank, Fuel fuel, Outcome<Consumption> cruise, Outcome<Power> cruisePower) {
        return Outcome.of(combination.cruise(), "the order names no cruise speed")
                .then(speed -> cruise.then(window -> cruisePower
                        .then(TankAnswer::driving)
                        .map(power -> new CruiseRange(
                                speed,
                                power,
                                flow(power, window.least(), fuel),
                                flow(power, window.most(), fuel),
                                tank.burnable()))));
    }

    private static Outcome<Power> driving(Power power) {
        return power.si() > 0.0
                ? Outcome.of(power)
                : Outcome.notEvaluated("the vehicle rolls at the cruise speed without power");
    }

    private static VolumeFlow flow(Power power, SpecificFuelConsumption consumption, Fuel fuel) {
        return new FuelDemand(power, consumption, fuel.density()).volume();
    }

    private static Outcome<Volume> expansion(Tank tank, Fuel fuel) {
        return Outcome.of(tank.day(), "the tank names no day; add it, such as day 20 degC to 34 degC")
                .map(day ->
                        fuel.expand(tank.volume(), day.coldest(), day.hottest()).minus(tank.volume()));
    }

    private static Outcome<Double> warming(
            Combination combination, Tank tank, Fuel fuel, Outcome<SupplyAnswer> supply) {
        Temperature at = SupplyGround.temperature(combination.fuelParts());
        return supply.then(SupplyAnswer::capacity)
                .then(point -> Outcome.of(point.electricPower(), "the pump's current was not measured"))
                .map(watts -> new Recirculation(
                                watts, new FlowingFuel(fuel, at), tank.volume().times(LOW_FILL))
                        .kelvinsPerHour());
    }

    private static Outcome<Mass> vapor(Tank tank, Fuel fuel, FuelParts parts) {
        return Outcome.of(tank.day(), "the tank names no day; add it, such as day 20 degC to 34 degC")
                .then(day -> fill(tank)
                        .then(fill -> parts.needElevation()
                                .then(elevation ->
                                        TankVapor.ofDay(fuel, tank.volume().times(1.0 - fill), day, elevation))));
    }

    private static Outcome<Double> fill(Tank tank) {
        return tank.fill().isPresent()
                ? Outcome.of(tank.fill().getAsDouble())
                : Outcome.notEvaluated("the tank says not how full it stands; add it, such as fill 40 %");
    }

    @Override
    public List<Caution> cautions() {
        return FuelCautions.all();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("range, expansion and vapor of the tank")
                .input("usable fuel", "V", Figure.of(tank.burnable(), Display.TANK_VOLUME), "tank")
                .input("density of the fuel at 15 degC", "rho", Figure.of(fuel.density(), Display.DENSITY), "fuel");
        range.value()
                .ifPresent(far -> working.input(
                                "power at the cruise", "P", Figure.of(far.power(), Display.POWER), "road load")
                        .input("cruise speed", "v", Figure.of(far.speed(), Display.ROAD_SPEED), "order")
                        .step("fuel at the cruise, least", "Q = P b / rho", Figure.of(far.least(), Display.VOLUME_FLOW))
                        .step("fuel at the cruise, most", "Q = P b / rho", Figure.of(far.most(), Display.VOLUME_FLOW)));
        expansion
                .value()
                .ifPresent(gain -> working.step(
                        "expansion of a full tank",
                        "V (rho_cold / rho_hot - 1)",
                        Figure.of(gain, Display.TANK_VOLUME)));
        vapor.value()
                .ifPresent(mass -> working.step(
                                "vapor of a day",
                                "a exp(b R) (exp(c t2) - exp(c t1)) V_vapor",
                                Figure.of(mass, Display.VAPOR_MASS))
                        .source(TankVapor.source()));
        return working.source(fuel.expansionSource()).build();
    }
}
