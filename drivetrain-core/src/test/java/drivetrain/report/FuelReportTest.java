package drivetrain.report;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.assessment.InjectorSizeAnswer;
import drivetrain.assessment.LineSizeAnswer;
import drivetrain.assessment.PumpSizeAnswer;
import drivetrain.assessment.SupplyAnswer;
import drivetrain.assessment.TankAnswer;
import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.combination.PartKind;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Outcome;
import drivetrain.fuel.Injectors;
import drivetrain.fuel.Pump;
import drivetrain.fuel.SupplyCurves;
import drivetrain.quantity.Power;
import drivetrain.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class FuelReportTest {

    private static final String PUMP =
            "13.5 V, 374 L/h at 0 psi 7 A, 331 L/h at 45 psi 11 A, 281 L/h at 80 psi 15 A, 200 L/h at 120 psi 19 A, 0 L/h at 150 psi 21 A";

    private static final Specification ORDER = Specification.empty()
            .with(Slot.ENGINE, "440 hp at 5900 rpm, 430 lb-ft at 4400 rpm, idle 600 rpm, max 6600 rpm")
            .with(Slot.FUEL, "E10, 748 kg/m3")
            .with(Slot.FUEL_PUMP, PUMP)
            .with(Slot.FEED_LINE, "4.6 m of 7.75 mm tube, filter 6 kPa at 200 L/h")
            .with(Slot.RETURN_LINE, "5 m of 8 mm tube")
            .with(Slot.INJECTORS, "8 x 42 lb/h at 43.5 psi")
            .with(Slot.FUEL_SYSTEM, "return 58 psi, 13.5 V, fuel at 40 degC, elevation 600 m")
            .with(Slot.TANK, "90 L, canister 80 g, fill 40 %, day 20 degC to 34 degC")
            .cruisingAt("70 mph");

    private static Combination of(Specification order) {
        return Combination.resolve(order, Catalog.empty());
    }

    private static String sentence(Report report) {
        return ((Sentence) report.blocks().get(0)).text();
    }

    private static String supply(Specification order) {
        return sentence(SupplyReport.of(SupplyAnswer.of(of(order)).orThrow(), UnitSystem.US));
    }

    @Test
    void saysThatTheSupplyKeepsUpAndWhatRunsOutFirst() {
        assertThat(supply(ORDER))
                .startsWith("At 13.50 V the fuel supply keeps up")
                .contains("the injectors run out first");
    }

    @Test
    void saysThatThePumpRunsOut() {
        assertThat(supply(ORDER.with(Slot.FUEL_PUMP, "13.5 V, 150 L/h at 0 psi, 100 L/h at 80 psi")))
                .contains("does not keep up", "the pump runs out first");
    }

    @Test
    void saysThatTheLinesRunOut() {
        assertThat(supply(ORDER.with(Slot.FEED_LINE, "14 m of 3.4 mm tube"))).contains("the lines run out first");
    }

    @Test
    void saysThatTheInjectorsAreShort() {
        assertThat(supply(ORDER.with(Slot.INJECTORS, "8 x 20 lb/h at 43.5 psi")))
                .contains("is short although the pump keeps up", "the injectors run out first");
    }

    @Test
    void saysThatTheFuelBoils() {
        assertThat(supply(ORDER.with(Slot.FUEL_SYSTEM, "return 58 psi, 13.5 V, fuel at 60 degC, elevation 3000 m")))
                .contains("the suction side runs out first, at 0 hp");
    }

    @Test
    void saysWhyItIsNotEvaluated() {
        assertThat(supply(ORDER.with(Slot.FUEL_PUMP, "13.5 V, 150 L/h at 0 psi, 100 L/h at 40 psi")))
                .contains("is not evaluated because the pump was measured up to 40.0 psi");
        assertThat(supply(ORDER.without(Slot.INJECTORS)
                        .with(Slot.FUEL_PUMP, "13.5 V, 150 L/h at 0 psi, 100 L/h at 40 psi")))
                .endsWith("US gal/h.");
    }

    @Test
    void drawsDemandAndPump() {
        SupplyAnswer answer = SupplyAnswer.of(of(ORDER)).orThrow();
        Report report = SupplyPlot.of(answer, SupplyCurves.of(answer.supply())).orThrow();
        assertThat(report.blocks().get(0)).isInstanceOf(Drawing.class);
        assertThat(report.blocks().get(1)).isInstanceOf(Drawing.class);
        assertThat(SupplyPlot.of(answer, Outcome.notEvaluated("no curve")).reason())
                .contains("no curve");
    }

    @Test
    void saysHowFarATankGoes() {
        assertThat(sentence(TankReport.of(
                        TankAnswer.of(of(ORDER), Outcome.of(Power.ofHorsepower(40.0)))
                                .orThrow(),
                        UnitSystem.US)))
                .startsWith("The tank holds 23.8 US gal, which lasts ")
                .endsWith("at a steady 70.0 mph.");
        assertThat(sentence(TankReport.of(
                        TankAnswer.of(of(ORDER), Outcome.notEvaluated("no drag"))
                                .orThrow(),
                        UnitSystem.US)))
                .contains("its range is not evaluated because no drag");
    }

    @Test
    void saysWhatHasToBeBought() {
        Part<Pump> pump = Part.of("p", "", Pump.parse(PUMP, name -> Optional.empty()), "test");
        Part<Injectors> injector =
                Part.of("i", "", Injectors.parse("42 lb/h at 43.5 psi", name -> Optional.empty()), "test");
        Combination order = of(ORDER);
        assertThat(sentence(FuelSizeReports.of(
                        PumpSizeAnswer.of(order, List.of(pump)).orThrow(), UnitSystem.US)))
                .endsWith("on the shelf: p.");
        assertThat(sentence(
                        FuelSizeReports.of(PumpSizeAnswer.of(order, List.of()).orThrow(), UnitSystem.US)))
                .endsWith("no pump on the shelf does.");
        assertThat(sentence(FuelSizeReports.of(
                        InjectorSizeAnswer.of(order, OptionalInt.empty(), List.of(injector))
                                .orThrow(),
                        UnitSystem.METRIC)))
                .startsWith("Each of 8 injectors has to be one of ");
        assertThat(sentence(FuelSizeReports.of(
                        LineSizeAnswer.of(order, Optional.empty()).orThrow(), UnitSystem.US)))
                .contains("the whole flow of the pump");
    }

    @Test
    void describesTheParts() {
        for (Slot slot : Slot.values()) {
            if (slot.isFuelSupply()) {
                Object item = of(ORDER).fuelParts().in(slot).orElseThrow().item();
                assertThat(FuelPartWords.figures(item)).isNotBlank();
            }
        }
        assertThat(FuelPartWords.figures(PartKind.FUEL_HOSE.parse("8 mm tube"))).isEqualTo("8.0 mm bore tube");
        assertThat(FuelPartWords.figures(PartKind.FUEL_FILTER.parse("8 kPa at 200 L/h")))
                .contains("psi at");
        assertThat(FuelPartWords.figures(PartKind.FUEL_PUMP.parse("2 x " + PUMP + " in parallel")))
                .isEqualTo("2 pumps");
        assertThat(FuelPartWords.figures(PartKind.FUEL_SYSTEM.parse("13.5 V"))).isEqualTo("no regulator given");
        assertThat(sentence(SetupReport.of(of(ORDER)))).contains("8 choices");
    }
}
