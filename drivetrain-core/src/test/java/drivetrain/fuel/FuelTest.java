package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Assumption;
import drivetrain.finding.SourceClass;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Volume;
import drivetrain.refusal.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FuelTest {

    @Test
    void readsAFuelByItsNameWhateverTheCase() {
        assertThat(Fuel.parse("e85").ethanol()).isEqualTo(0.83);
        assertThat(Fuel.parse("Diesel").family()).isEqualTo(FuelFamily.DIESEL);
    }

    @Test
    void flagsWhatNobodyMeasured() {
        assertThat(Fuel.parse("E85").assumptions())
                .extracting(Assumption::subject)
                .containsExactly(
                        "ethanol in the fuel",
                        "density of the fuel",
                        "viscosity of the fuel",
                        "vapor pressure of the fuel");
        assertThat(Fuel.parse("E85").assumptions()).allMatch(Assumption::flagged);
        assertThat(Fuel.parse("E85, ethanol 70 %, 780 kg/m3, viscosity 1.3 mm2/s, reid 8 psi")
                        .assumptions())
                .isEmpty();
    }

    @Test
    void mixesTheAirOfABlendByMass() {
        Fuel blend = Fuel.parse("E85, ethanol 85 %, 780 kg/m3");
        double share = 0.85 * 794.0 / 780.0;
        assertThat(blend.ethanolByMass()).isCloseTo(share, within(1e-12));
        assertThat(blend.stoichiometricRatio()).isCloseTo(9.0 * share + 14.7 * (1.0 - share), within(1e-12));
        assertThat(Fuel.parse("gasoline").stoichiometricRatio()).isEqualTo(14.7);
        assertThat(Fuel.parse("diesel").stoichiometricRatio()).isEqualTo(14.5);
    }

    @Test
    void burnsMoreOfABlend() {
        assertThat(Fuel.parse("gasoline").consumptionFactor()).isEqualTo(1.0);
        assertThat(Fuel.parse("E85").consumptionFactor()).isBetween(1.4, 1.5);
        assertThat(Fuel.parse("E85, ethanol 100 %, 794 kg/m3").consumptionFactor())
                .isCloseTo(43.4 / 26.8, within(1e-12));
    }

    /** From 745 to 838 kg/m3 the expansion falls as the fuel gets heavier, without a jump between the groups of the standard. */
    @Test
    void expandsLessTheHeavierItIs() {
        double before = 1.0;
        for (double density = 660.0; density <= 1000.0; density += 0.5) {
            Fuel fuel = Fuel.parse("gasoline, " + density + " kg/m3");
            double shrunk = 1.0 - fuel.densityAt(Temperature.ofCelsius(40.0)).toKilogramsPerCubicMeter() / density;
            assertThat(shrunk).isPositive().isLessThan(before + 2e-4);
            before = shrunk;
        }
    }

    @Test
    void fillsMoreVolumeWhenHot() {
        Fuel fuel = Fuel.parse("gasoline, 745 kg/m3");
        Volume hot = fuel.expand(Volume.ofLiters(90.0), Temperature.ofCelsius(10.0), Temperature.ofCelsius(45.0));
        assertThat(hot.toLiters()).isBetween(93.0, 95.0);
        assertThat(fuel.expansionSource().kind()).isEqualTo(SourceClass.STANDARD);
    }

    @Test
    void dieselDoesNotBoil() {
        assertThat(Fuel.parse("diesel")
                        .vaporPressureAt(Temperature.ofCelsius(40.0))
                        .reason())
                .contains("diesel hardly evaporates");
    }

    @Test
    void boilsEarlierAsItGetsHotter() {
        Fuel fuel = Fuel.parse("gasoline, reid 9 psi");
        double cool =
                fuel.vaporPressureAt(Temperature.ofCelsius(20.0)).orThrow().toPsi();
        double hot = fuel.vaporPressureAt(Temperature.ofCelsius(60.0)).orThrow().toPsi();
        assertThat(hot).isGreaterThan(2.5 * cool);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "premium|0|is not a fuel that is known",
                "gasolin|0|is not a fuel that is known",
                "gasoline, 745|13|has no unit",
                "gasoline, 745,5 kg/m3|13|comma",
                "gasoline, 300 kg/m3|10|out of range",
                "gasoline, viscosity 0.5 cP|24|can mean more than one unit",
                "gasoline, reid 60 kg|18|is a unit of mass",
                "gasoline, ethanol 20|20|has no percent sign",
                "gasoline, ethanol 120 %|18|out of range",
                "diesel, ethanol 10 %|0|is out of range",
                "gasoline, reid 9 psi, reid 9 psi|22|gives the Reid vapor pressure twice",
                "gasoline,, 745 kg/m3|8|separates nothing",
                "gasoline cold|9|is not understood",
                "gasoline, octane 95|10|is not understood"
            })
    void refusesWhatItCannotReadWithThePlace(String text, int position, String problem) {
        Refusal refusal = Supplies.refused(() -> Fuel.parse(text));
        assertThat(refusal.subject()).isEqualTo("fuel");
        assertThat(refusal.given()).isEqualTo(text);
        assertThat(refusal.problem()).contains(problem);
        assertThat(refusal.position()).hasValue(position);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   "})
    void refusesNothing(String text) {
        assertThat(Supplies.refused(() -> Fuel.parse(text)).problem()).isEqualTo("is empty");
    }

    @Test
    void refusesATemperatureForWhichNothingIsKnown() {
        Fuel fuel = Fuel.parse("gasoline");
        assertThat(Supplies.refused(() -> fuel.densityAt(Temperature.ofCelsius(91.0)))
                        .allowed())
                .isEqualTo("-40 degC to 90 degC");
    }

    @Test
    void takesAnotherName() {
        assertThat(Fuel.parse("E10").withName("pump gas").name()).isEqualTo("pump gas");
        assertThat(Supplies.refused(() -> Fuel.parse("E10").withName(" ")).problem())
                .isEqualTo("has no name");
    }
}
