package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.SourceClass;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.MassFlow;
import drivetrain.quantity.Power;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.SpecificFuelConsumption;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.Volume;
import drivetrain.quantity.VolumeFlow;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FuelChecksTest {

    private static final FuelHouse HOUSE = FuelHouse.packed();

    private static final Source RULE = Source.given("test");

    @ParameterizedTest
    @CsvSource({"230, MET", "229.9, MARGINAL", "200, MARGINAL", "199.9, EXCEEDED"})
    void judgesTheFlowByDemandAndMargin(double flow, Verdict verdict) {
        Finding finding = FuelChecks.supply(
                Voltage.ofVolts(12.0),
                Outcome.of(VolumeFlow.ofLitersPerHour(flow)),
                VolumeFlow.ofLitersPerHour(200.0),
                0.15,
                RULE);
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.checked()).endsWith("at 12.0 V");
    }

    @ParameterizedTest
    @CsvSource({"0.85, MET", "0.86, MARGINAL", "1.0, MARGINAL", "1.01, EXCEEDED"})
    void judgesTheDuty(double duty, Verdict verdict) {
        assertThat(FuelChecks.duty(Outcome.of(duty), 0.85, RULE).verdict()).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"100, MET", "60, MARGINAL", "45, EXCEEDED"})
    void judgesTheCanisterByDays(double capacity, Verdict verdict) {
        assertThat(FuelChecks.canister(Mass.ofGrams(50.0), Mass.ofGrams(capacity))
                        .verdict())
                .isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"101, MET", "70, MARGINAL", "55, EXCEEDED"})
    void judgesTheSuctionSide(double airKilopascals, Verdict verdict) {
        Suction suction = new Suction(
                Supplies.line("4 m of 8 mm tube"),
                Supplies.gasoline(),
                Length.ofMeters(0.0),
                Pressure.ofKilopascals(airKilopascals),
                Pressure.ofKilopascals(65.0));
        assertThat(FuelChecks.suction(Outcome.of(suction), Outcome.of(VolumeFlow.ofLitersPerHour(100.0)), HOUSE)
                        .verdict())
                .isEqualTo(verdict);
    }

    @Test
    void saysWhyACheckIsNotEvaluated() {
        Outcome<VolumeFlow> unknown = Outcome.notEvaluated("no pump is chosen");
        assertThat(FuelChecks.supply(Voltage.ofVolts(12.0), unknown, VolumeFlow.ofLitersPerHour(1.0), 0.15, RULE)
                        .statement())
                .isEqualTo("no pump is chosen");
        assertThat(FuelChecks.duty(Outcome.notEvaluated("no injectors are chosen"), 0.85, RULE)
                        .verdict())
                .isEqualTo(Verdict.NOT_EVALUATED);
        assertThat(FuelChecks.suction(Outcome.notEvaluated("diesel hardly evaporates"), unknown, HOUSE)
                        .statement())
                .isEqualTo("diesel hardly evaporates");
    }

    @Test
    void judgesLinesAndWires() {
        FuelSupply narrow = new FuelSupply(
                Supplies.pump(Supplies.PUMP),
                FuelLine.parse(
                        "5 m of weak",
                        new FuelLine.Shelves(
                                name -> Optional.of(new Conduit(
                                        name,
                                        Conduit.Material.HOSE,
                                        Length.ofMillimeters(6.0),
                                        Optional.of(Pressure.ofBar(2.0)))),
                                name -> Optional.empty())),
                Supplies.supply().regulator(),
                Supplies.gasoline(),
                Length.ofMeters(0.5),
                Pressure.ofPascals(0.0),
                Voltage.ofVolts(13.5),
                Optional.of(Wire.ofGauge(Length.ofMeters(5.0), 16)));
        List<Finding> findings = FuelChecks.lines(narrow, narrow.capacity().orThrow(), HOUSE);
        assertThat(findings)
                .extracting(Finding::verdict)
                .containsExactly(Verdict.MARGINAL, Verdict.EXCEEDED, Verdict.MARGINAL);
        FuelSupply wide = Supplies.supply();
        assertThat(FuelChecks.lines(wide, wide.capacity().orThrow(), HOUSE))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.MET);
    }

    @ParameterizedTest
    @EnumSource(EngineKind.class)
    void everyEngineKindHasItsWindows(EngineKind kind) {
        Fuel fuel = Fuel.parse(kind == EngineKind.DIESEL ? "diesel" : "gasoline");
        assertThat(Consumption.full(kind, fuel).most())
                .isGreaterThan(Consumption.full(kind, fuel).least());
        assertThat(Consumption.cruise(kind, fuel).assumptions()).allMatch(one -> one.flagged());
        assertThat(kind.label()).isNotBlank();
    }

    @Test
    void ethanolRaisesTheWindow() {
        double gasoline = Consumption.full(EngineKind.SPARK_NATURAL, Fuel.parse("gasoline"))
                .most()
                .toPoundsPerHorsepowerHour();
        Consumption blend = Consumption.full(EngineKind.SPARK_NATURAL, Fuel.parse("E85"));
        assertThat(blend.most().toPoundsPerHorsepowerHour() / gasoline)
                .isCloseTo(Fuel.parse("E85").consumptionFactor(), within(1e-12));
        assertThat(blend.assumptions().get(0).statement()).contains("for the ethanol");
    }

    @Test
    void aMeasuredConsumptionIsNotFlagged() {
        Consumption measured = Consumption.of(SpecificFuelConsumption.ofPoundsPerHorsepowerHour(0.5));
        assertThat(measured.assumptions()).isEmpty();
        assertThat(measured.source().kind()).isEqualTo(SourceClass.GIVEN);
        assertThat(Supplies.refused(() -> Consumption.of(SpecificFuelConsumption.ofGramsPerKilowattHour(3.0)))
                        .problem())
                .isEqualTo("is out of range");
    }

    @Test
    void demandIsExplained() {
        FuelDemand demand = new FuelDemand(
                Power.ofHorsepower(420.0),
                SpecificFuelConsumption.ofPoundsPerHorsepowerHour(0.5),
                Supplies.gasoline().density());
        assertThat(demand.working().steps()).hasSize(2);
        assertThat(demand.volume().toLitersPerHour()).isBetween(128.0, 135.0);
        assertThat(FuelDemand.powerOf(demand.mass(), demand.consumption()).toHorsepower())
                .isCloseTo(420.0, within(1e-9));
    }

    @Test
    void warmsASmallTankFaster() {
        Power watts = Power.ofWatts(120.0);
        double full = new Recirculation(watts, Supplies.gasoline(), Volume.ofLiters(80.0)).kelvinsPerHour();
        double low = new Recirculation(watts, Supplies.gasoline(), Volume.ofLiters(8.0)).kelvinsPerHour();
        assertThat(low).isCloseTo(10.0 * full, within(1e-9));
        assertThat(full)
                .isCloseTo(
                        120.0 * 3600.0 / (0.08 * Supplies.gasoline().density().toKilogramsPerCubicMeter() * 2010.0),
                        within(1e-9));
        assertThat(Supplies.refused(() -> new Recirculation(watts, Supplies.gasoline(), Volume.ofLiters(0.0)))
                        .problem())
                .contains("the tank is empty");
    }

    @Test
    void sizesInjectorsAndConvertsThemToTheMakersTerms() {
        MassFlow each = FuelSizing.injector(MassFlow.ofPoundsPerHour(231.0), 8, 0.85);
        assertThat(each.toPoundsPerHour()).isCloseTo(33.97, within(0.005));
        MassFlow rated = FuelSizing.rated(
                each,
                Pressure.ofPsi(58.0),
                Supplies.gasoline().density(),
                Pressure.ofPsi(43.5),
                Injector.usualTestDensity());
        Injectors fitted =
                Injectors.parse("8 x " + rated.toPoundsPerHour() + " lb/h at 43.5 psi", name -> Optional.empty());
        assertThat(new InjectorUse(
                                fitted,
                                MassFlow.ofPoundsPerHour(231.0),
                                Pressure.ofPsi(58.0),
                                Supplies.gasoline().density())
                        .duty()
                        .orThrow())
                .isCloseTo(0.85, within(1e-9));
        assertThat(Supplies.refused(() -> FuelSizing.injector(each, 0, 0.85)).allowed())
                .contains("1 injector");
        assertThat(Supplies.refused(() -> FuelSizing.injector(each, 8, 1.2)).allowed())
                .contains("1 injector");
    }

    @Test
    void sizesALineByTheSpeedInIt() {
        List<FuelSizing.Bore> bores = FuelSizing.bores(
                VolumeFlow.ofLitersPerHour(260.0), Length.ofMeters(5.0), Supplies.gasoline(), false, HOUSE);
        assertThat(bores)
                .filteredOn(FuelSizing.Bore::wideEnough)
                .isNotEmpty()
                .allSatisfy(bore ->
                        assertThat(bore.conduit().bore().toMillimeters()).isGreaterThan(5.0));
        assertThat(FuelSizing.bores(
                        VolumeFlow.ofLitersPerHour(260.0), Length.ofMeters(5.0), Supplies.gasoline(), true, HOUSE))
                .filteredOn(FuelSizing.Bore::wideEnough)
                .hasSizeLessThan(
                        (int) bores.stream().filter(FuelSizing.Bore::wideEnough).count());
        assertThat(FuelSizing.boreSource().kind()).isEqualTo(SourceClass.COMMON_PRACTICE);
    }

    @Test
    void theModelOfTheDailyVaporEndsAtFifteenPercentEthanol() {
        Tank.Day day = new Tank.Day(Temperature.ofCelsius(20.0), Temperature.ofCelsius(35.0));
        assertThat(TankVapor.ofDay(Fuel.parse("E85"), Volume.ofLiters(50.0), day, Length.ofMeters(0.0))
                        .reason()
                        .orElseThrow())
                .contains("15 % ethanol");
        assertThat(TankVapor.ofDay(Fuel.parse("diesel"), Volume.ofLiters(50.0), day, Length.ofMeters(0.0))
                        .reason())
                .contains("diesel hardly evaporates");
        assertThat(TankVapor.ofDay(Fuel.parse("gasoline"), Volume.ofLiters(50.0), day, Length.ofMeters(0.0))
                        .orThrow()
                        .toGrams())
                .isPositive();
        assertThat(TankVapor.source().kind()).isEqualTo(SourceClass.HANDBOOK);
    }

    @Test
    void everyAnswerAboutFuelCarriesCautions() {
        assertThat(FuelCautions.all())
                .extracting(caution -> caution.hazard())
                .contains("fire", "fuel under pressure", "fuel law");
    }

    @Test
    void refusesANameThatNoTableHas() {
        assertThat(Supplies.refused(() -> FuelConstant.of("octane")).problem()).contains("fuel/constants.csv");
        assertThat(Supplies.refused(() -> FuelLimit.of("noise")).problem()).contains("fuel/limits.csv");
    }
}
