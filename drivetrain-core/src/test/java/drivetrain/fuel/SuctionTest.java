package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.VolumeFlow;
import org.junit.jupiter.api.Test;

class SuctionTest {

    private static final VolumeFlow FLOW = VolumeFlow.ofLitersPerHour(250.0);
    private static final Pressure SEA = Pressure.ofPascals(101_325.0);

    private static Suction at(String line, double celsius, double lift, Pressure air) {
        FlowingFuel fuel = new FlowingFuel(Supplies.gasoline().fuel(), Temperature.ofCelsius(celsius));
        return Suction.of(Supplies.line(line), fuel, Length.ofMeters(lift), air).orThrow();
    }

    @Test
    void liftLossHeatAndAltitudeEatTheMargin() {
        double tank = at("4 m of 8 mm tube", 20.0, 0.0, SEA).margin(FLOW).toPascals();
        assertThat(at("4 m of 8 mm tube", 20.0, 0.3, SEA).margin(FLOW).toPascals())
                .isLessThan(tank);
        assertThat(at("1 m of 8 mm hose, pump, 4 m of 8 mm tube", 20.0, 0.0, SEA)
                        .margin(FLOW)
                        .toPascals())
                .isLessThan(tank);
        assertThat(at("4 m of 8 mm tube", 45.0, 0.0, SEA).margin(FLOW).toPascals())
                .isLessThan(tank);
        assertThat(at("4 m of 8 mm tube", 20.0, 0.0, Pressure.ofHectopascals(835.0))
                        .margin(FLOW)
                        .toPascals())
                .isCloseTo(tank - 17_825.0, within(1e-6));
    }

    @Test
    void canBeNegativeWhateverThePump() {
        Suction hot = at("4 m of 8 mm tube", 55.0, 0.0, Pressure.ofHectopascals(835.0));
        assertThat(hot.margin(FLOW).si()).isNegative();
        assertThat(hot.mostFlow().orThrow().si()).isZero();
    }

    @Test
    void boilsAtTheFlowWhoseLossLeavesNoMargin() {
        Suction suction = at("2 m of 6 mm hose, pump, 4 m of 8 mm tube", 40.0, 0.3, SEA);
        VolumeFlow most = suction.mostFlow().orThrow();
        assertThat(suction.margin(most).toPascals()).isCloseTo(0.0, within(0.1));
        assertThat(suction.margin(most.times(0.9)).si()).isPositive();
    }

    @Test
    void limitsNothingWhereThePumpHangsInTheTank() {
        assertThat(at("4 m of 8 mm tube", 20.0, 0.0, SEA).mostFlow().value()).isEmpty();
    }

    @Test
    void refusesAGaugePressureGivenForAnAbsoluteOne() {
        assertThat(Supplies.refused(() -> at("4 m of 8 mm tube", 20.0, 0.0, Pressure.ofPsi(-2.0)))
                        .problem())
                .isEqualTo("must be greater than zero");
    }

    @Test
    void isNotEvaluatedForDiesel() {
        FlowingFuel diesel = new FlowingFuel(Fuel.parse("diesel"), Temperature.ofCelsius(20.0));
        assertThat(Suction.of(Supplies.line("4 m of 8 mm tube"), diesel, Length.ofMeters(0.0), SEA)
                        .reason())
                .contains("diesel hardly evaporates");
    }

    @Test
    void explainsItself() {
        Suction suction = at("1 m of 8 mm hose, pump, 4 m of 8 mm tube", 20.0, 0.0, SEA);
        assertThat(suction.working(FLOW).steps()).hasSize(3);
        assertThat(suction.assumptions()).isNotEmpty();
    }
}
