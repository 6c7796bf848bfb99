package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Power;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.Volume;
import drivetrain.refusal.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FuelSystemTest {

    @Test
    void readsEverythingInAnyOrder() {
        FuelSystem system = FuelSystem.parse(
                "fuel at 40 degC, return 43.5 psi, boost-referenced, lift 0.5 m, suction-lift 0.2 m, boost 8 psi, 13.8 V,"
                        + " low 12.2 V, wire 5 m of AWG 12, elevation 1600 m, margin 20 %, burns 0.52 lb/(hp-h), blower 45 hp, duty 80 %");
        assertThat(system.regulator()).contains(new Regulator(Regulator.Layout.RETURN, Pressure.ofPsi(43.5), true));
        assertThat(system.lift()).contains(Length.ofMeters(0.5));
        assertThat(system.suctionLift()).contains(Length.ofMeters(0.2));
        assertThat(system.boost()).contains(Pressure.ofPsi(8.0));
        assertThat(system.voltage()).contains(Voltage.ofVolts(13.8));
        assertThat(system.worstVoltage()).contains(Voltage.ofVolts(12.2));
        assertThat(system.wire()).contains(Wire.ofGauge(Length.ofMeters(5.0), 12));
        assertThat(system.temperature()).contains(Temperature.ofCelsius(40.0));
        assertThat(system.elevation()).contains(Length.ofMeters(1600.0));
        assertThat(system.margin()).hasValue(0.2);
        assertThat(system.consumption().orElseThrow().toPoundsPerHorsepowerHour())
                .isCloseTo(0.52, within(1e-12));
        assertThat(system.blower()).contains(Power.ofHorsepower(45.0));
        assertThat(system.duty()).hasValue(0.8);
    }

    @Test
    void leavesOpenWhatIsNotSaid() {
        FuelSystem system = FuelSystem.parse("returnless 58 psi, wire 5 m of 4 mm2");
        assertThat(system.regulator().orElseThrow().layout()).isEqualTo(Regulator.Layout.RETURNLESS);
        assertThat(system.wire().orElseThrow().areaSquareMillimeters()).isEqualTo(4.0);
        assertThat(system.voltage()).isEmpty();
        assertThat(system.worstVoltage()).isEmpty();
        assertThat(FuelSystem.unknown().regulator()).isEmpty();
        assertThat(FuelSystem.parse("13.5 V").worstVoltage()).contains(Voltage.ofVolts(13.5));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "return|6|has no setting of the regulator",
                "return 43.5|11|has no unit",
                "return 500 psi|7|is out of range",
                "return -3 psi|7|is out of range",
                "return 43.5 psi, returnless 58 psi|17|gives the regulator twice",
                "boost-referenced|0|references a regulator",
                "12 V, low 13 V|0|low voltage above the voltage",
                "120 V|0|is out of range",
                "lift 20 m|5|is out of range",
                "boost -5 psi|6|is out of range",
                "wire 5 m|8|says not how thick",
                "wire 5 m of AWG 40|16|is out of range",
                "wire 5 m of AWG thick|16|has no wire gauge",
                "wire 5 m of copper|12|has no thickness",
                "wire 5 m of 0.1 mm2|5|is out of range",
                "fuel at 200 degC|0|is out of range",
                "fuel at hot|8|has no fuel temperature",
                "margin 15|9|has no percent sign",
                "margin 1/2 %|7|has no margin",
                "burns 5 lb/(hp-h)|0|is out of range",
                "duty 0 %|5|is out of range",
                "blower 5000 hp|7|is out of range",
                "elevation 9000 m|10|is out of range",
                "pressure 58 psi|0|is not understood",
                "13.5 V 12 V|7|is not understood"
            })
    void refusesWhatItCannotReadWithThePlace(String text, int position, String problem) {
        Refusal refusal = Supplies.refused(() -> FuelSystem.parse(text));
        assertThat(refusal.subject()).isEqualTo("fuel system");
        assertThat(refusal.problem()).contains(problem);
        assertThat(refusal.position()).hasValue(position);
    }

    @Test
    void readsATank() {
        Tank tank = Tank.parse("90 L, usable 82 L, canister 75 g, fill 40 %, day 72 degF to 96 degF");
        assertThat(tank.burnable()).isEqualTo(Volume.ofLiters(82.0));
        assertThat(tank.canister()).contains(Mass.ofGrams(75.0));
        assertThat(tank.fill()).hasValue(0.4);
        assertThat(tank.day()).contains(new Tank.Day(Temperature.ofFahrenheit(72.0), Temperature.ofFahrenheit(96.0)));
        assertThat(Tank.parse("24 US gal").burnable()).isEqualTo(Volume.ofUsGallons(24.0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "20 gal|3|can mean more than one unit",
                "0 L|0|is out of range",
                "90 L, usable 95 L|13|is out of range",
                "90 L, canister 75|17|has no unit",
                "90 L, fill 140 %|11|is out of range",
                "90 L, day 40 degC|17|says not how hot",
                "90 L, day 40 degC to 20 degC|10|is not above the coldest",
                "90 L, red|6|is not understood",
                "big|0|has no volume of the tank"
            })
    void refusesATankThatItCannotReadWithThePlace(String text, int position, String problem) {
        Refusal refusal = Supplies.refused(() -> Tank.parse(text));
        assertThat(refusal.subject()).isEqualTo("tank");
        assertThat(refusal.problem()).contains(problem);
        assertThat(refusal.position()).hasValue(position);
    }
}
