package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Assumption;
import drivetrain.quantity.Density;
import drivetrain.quantity.MassFlow;
import drivetrain.quantity.Pressure;
import drivetrain.refusal.Refusal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InjectorsTest {

    private static final Density TEST_FLUID = Density.ofKilogramsPerCubicMeter(720.0);

    private static Injectors read(String text) {
        return Injectors.parse(text, name -> Optional.empty());
    }

    @Test
    void flowsWithTheSquareRootOfPressureAndOfDensity() {
        Injectors injectors = read("8 x 42 lb/h at 43.5 psi");
        assertThat(injectors.flowAt(Pressure.ofPsi(43.5), TEST_FLUID).orThrow().toPoundsPerHour())
                .isCloseTo(336.0, within(1e-9));
        assertThat(injectors
                        .flowAt(Pressure.ofPsi(4.0 * 43.5), TEST_FLUID)
                        .orThrow()
                        .toPoundsPerHour())
                .isCloseTo(672.0, within(1e-9));
        assertThat(injectors
                        .flowAt(Pressure.ofPsi(43.5), TEST_FLUID.times(1.21))
                        .orThrow()
                        .toPoundsPerHour())
                .isCloseTo(336.0 * 1.1, within(1e-9));
    }

    @Test
    void flowsNothingWithoutPressure() {
        assertThat(read("8 x 42 lb/h at 43.5 psi")
                        .flowAt(Pressure.ofPsi(-5.0), TEST_FLUID)
                        .orThrow()
                        .si())
                .isZero();
    }

    @Test
    void boostOnARegulatorThatDoesNotFollowItTakesFlow() {
        Injectors injectors = read("8 x 42 lb/h at 43.5 psi");
        MassFlow open =
                injectors.flowAt(Pressure.ofPsi(43.5 - 10.0), TEST_FLUID).orThrow();
        assertThat(open.toPoundsPerHour()).isCloseTo(336.0 * Math.sqrt(33.5 / 43.5), within(1e-9));
    }

    @Test
    void saysThatTheirNumberIsMissing() {
        assertThat(read("42 lb/h at 43.5 psi")
                        .flowAt(Pressure.ofPsi(43.5), TEST_FLUID)
                        .reason()
                        .orElseThrow())
                .contains("such as injectors 8 x 42 lb/h at 43.5 psi");
    }

    @Test
    void flagsATestFluidThatIsNotGiven() {
        assertThat(read("8 x 42 lb/h at 43.5 psi").assumptions())
                .filteredOn(Assumption::flagged)
                .extracting(Assumption::subject)
                .containsExactly("injector test fluid");
        assertThat(read("8 x 440 cc/min at 3 bar, tested at 0.69 kg/L").assumptions())
                .noneMatch(Assumption::flagged);
        assertThat(read("8 x 440 cc/min at 3 bar, tested at 0.69 kg/L")
                        .each()
                        .flow()
                        .toKilogramsPerHour())
                .isCloseTo(440e-3 * 60.0 * 0.69, within(1e-9));
    }

    @Test
    void findsAnInjectorOnTheShelf() {
        Injectors one = read("42 lb/h at 43.5 psi");
        Injectors eight =
                Injectors.parse("8 x inj-42", name -> name.equals("inj-42") ? Optional.of(one) : Optional.empty());
        assertThat(eight.number()).hasValue(8);
        assertThat(eight.each()).isEqualTo(one.each());
        assertThat(Supplies.refused(() -> Injectors.parse("8 x inj-42, tested at 0.7 kg/L", name -> Optional.of(one)))
                        .position())
                .hasValue(12);
    }

    @Test
    void standsOpenForTheShareOfWhatItCouldPass() {
        InjectorUse use = new InjectorUse(
                read("8 x 42 lb/h at 43.5 psi"), MassFlow.ofPoundsPerHour(252.0), Pressure.ofPsi(43.5), TEST_FLUID);
        assertThat(use.duty().orThrow()).isCloseTo(0.75, within(1e-12));
        assertThat(use.working().steps()).hasSize(2);
        InjectorUse starved = new InjectorUse(
                read("8 x 42 lb/h at 43.5 psi"), MassFlow.ofPoundsPerHour(252.0), Pressure.ofPsi(0.0), TEST_FLUID);
        assertThat(starved.duty().reason()).contains("no pressure is left above the manifold's");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "8 x|2|is not a unit of volume flow",
                "8 x big|4|is not an injector on the shelf",
                "0 x 42 lb/h at 43.5 psi|0|has 0 injectors",
                "8 x 42 lb/h|11|says not at which pressure",
                "8 x 42 gal at 43.5 psi|7|is not a unit of volume flow",
                "8 x 42 lb/h at 43.5 psi, red|25|is not understood",
                "8 x 42 lb/h at 43.5 psi, tested at 7 kg/L|35|is out of range",
                "8 x 42 lb/h at -43.5 psi|15|is out of range",
                "8 x 9999 lb/h at 43.5 psi|4|is out of range"
            })
    void refusesWhatItCannotReadWithThePlace(String text, int position, String problem) {
        Refusal refusal = Supplies.refused(() -> read(text));
        assertThat(refusal.subject()).isEqualTo("injectors");
        assertThat(refusal.problem()).contains(problem);
        assertThat(refusal.position()).hasValue(position);
    }
}
