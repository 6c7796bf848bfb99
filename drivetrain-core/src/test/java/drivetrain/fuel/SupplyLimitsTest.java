package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Outcome;
import drivetrain.quantity.MassFlow;
import drivetrain.quantity.Power;
import drivetrain.quantity.SpecificFuelConsumption;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SupplyLimitsTest {

    private static final SpecificFuelConsumption HALF = SpecificFuelConsumption.ofPoundsPerHorsepowerHour(0.5);

    private static SupplyLimits limits(FuelSupply supply, String injectors, double blowerHp) {
        return new SupplyLimits(
                supply,
                Outcome.notEvaluated("not looked at"),
                Outcome.of(Injectors.parse(injectors, name -> Optional.empty())),
                0.85,
                HALF,
                Power.ofHorsepower(blowerHp));
    }

    private static double horsepower(SupplyLimits limits, RunOut.Part part) {
        return limits.parts().stream()
                .filter(one -> one.part() == part)
                .findFirst()
                .orElseThrow()
                .power()
                .orThrow()
                .toHorsepower();
    }

    @Test
    void turnsFlowIntoPower() {
        FuelSupply supply = Supplies.supply();
        SupplyLimits limits = limits(supply, "8 x 42 lb/h at 43.5 psi", 0.0);
        MassFlow mass = FuelDemand.massFlow(
                supply.capacity().orThrow().flow(), supply.fuel().density());
        assertThat(horsepower(limits, RunOut.Part.PUMP_THROUGH_LINES))
                .isCloseTo(mass.toPoundsPerHour() / 0.5, within(1e-6));
        assertThat(horsepower(limits, RunOut.Part.PUMP_ALONE))
                .isGreaterThan(horsepower(limits, RunOut.Part.PUMP_THROUGH_LINES));
    }

    @Test
    void theInjectorsRunOutAtTheirDutyWhereTheRegulatorHolds() {
        FuelSupply supply = Supplies.supply();
        double expected = 8 * 42.0 * 0.85 * Math.sqrt(supply.fuel().density().toKilogramsPerCubicMeter() / 720.0) / 0.5;
        assertThat(horsepower(limits(supply, "8 x 42 lb/h at 43.5 psi", 0.0), RunOut.Part.INJECTORS))
                .isCloseTo(expected, within(0.01));
        assertThat(RunOut.first(limits(supply, "8 x 20 lb/h at 43.5 psi", 0.0).parts())
                        .orElseThrow()
                        .part())
                .isEqualTo(RunOut.Part.INJECTORS);
        assertThat(RunOut.first(limits(supply, "8 x 90 lb/h at 43.5 psi", 0.0).parts())
                        .orElseThrow()
                        .part())
                .isEqualTo(RunOut.Part.PUMP_THROUGH_LINES);
    }

    @Test
    void aReturnlessLineTakesPressureFromTheInjectors() {
        FuelSupply supply = Supplies.supply(Regulator.Layout.RETURNLESS, 43.5, 13.5, Optional.empty());
        double atRegulator =
                8 * 42.0 * 0.85 * Math.sqrt(supply.fuel().density().toKilogramsPerCubicMeter() / 720.0) / 0.5;
        double lost = horsepower(limits(supply, "8 x 42 lb/h at 43.5 psi", 0.0), RunOut.Part.INJECTORS);
        assertThat(lost).isLessThan(atRegulator).isGreaterThan(0.8 * atRegulator);
    }

    @Test
    void aDrivenSuperchargerBurnsFuelThatTheCrankDoesNotSee() {
        FuelSupply supply = Supplies.supply();
        double without = horsepower(limits(supply, "8 x 42 lb/h at 43.5 psi", 0.0), RunOut.Part.PUMP_ALONE);
        assertThat(horsepower(limits(supply, "8 x 42 lb/h at 43.5 psi", 60.0), RunOut.Part.PUMP_ALONE))
                .isCloseTo(without - 60.0, within(1e-6));
        assertThat(horsepower(limits(supply, "8 x 42 lb/h at 43.5 psi", 5000.0), RunOut.Part.PUMP_ALONE))
                .isZero();
    }

    @Test
    void nothingRunsOutFirstWhereNothingIsKnown() {
        assertThat(RunOut.first(List.of(new RunOut(RunOut.Part.SUCTION, Outcome.notEvaluated("no")))))
                .isEmpty();
    }
}
