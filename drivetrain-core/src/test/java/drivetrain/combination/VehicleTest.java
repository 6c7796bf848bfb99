package drivetrain.combination;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.quantity.Mass;
import drivetrain.refusal.Refusal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VehicleTest {

    @Test
    void readsALiteral() {
        Vehicle vehicle = Vehicle.parse("mass 2150 kg front 1250 kg rear 1700 kg");

        assertThat(vehicle.name()).isEqualTo("mass 2150 kg front 1250 kg rear 1700 kg");
        assertThat(vehicle.mass()).contains(Mass.ofKilograms(2150.0));
        assertThat(vehicle.frontAxleLoad()).contains(Mass.ofKilograms(1250.0));
        assertThat(vehicle.rearAxleLoad()).contains(Mass.ofKilograms(1700.0));
        assertThat(vehicle.dualRearWheels()).isFalse();
        assertThat(vehicle.speedometer()).isEmpty();
    }

    @Test
    void readsItsEntriesInAnyOrderAndCaseAndEachMayLack() {
        Vehicle vehicle = Vehicle.parse("  dual REAR 3000 kg");

        assertThat(vehicle.dualRearWheels()).isTrue();
        assertThat(vehicle.rearAxleLoad()).contains(Mass.ofKilograms(3000.0));
        assertThat(vehicle.mass()).isEmpty();
        assertThat(vehicle.frontAxleLoad()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "~~; 0; describes no vehicle",
                "~   ~; 0; describes no vehicle",
                "weight 2150 kg; 0; \"weight\" does not describe a vehicle",
                "mass 2150 kg mass 2000 kg; 13; \"mass\" stands there twice",
                "dual rear 1700 kg dual; 18; \"dual\" stands there twice",
                "mass; 4; \"mass\" has nothing behind it",
                "mass 2150 kg front dual; 18; \"front\" has nothing behind it",
                "mass 2150 kg front heavy; 19; does not start with a number",
                "mass 2150; 9; unit",
                "front 1250 kg rear 99 kg; 19; is out of range",
                "mass 20001 kg; 5; is out of range",
                "mass 2150 kg drag 11 m2; 18; is out of range",
                "drag 1.4; 8; unit",
                "split 100 %; 6; outside the wheelbase",
                "split 0.54; 6; is not a percentage",
                "wheelbase 2850 mm cg 5 m; 21; is out of range",
                "engine-inertia 99 kg m2; 15; is out of range",
                "split 54 % split 50 %; 11; stands there twice"
            })
    void locatesEveryFault(String text, int position, String problem) {
        Refusal refusal = Refusals.of(() -> Vehicle.parse(text));

        assertThat(refusal.subject()).isEqualTo("vehicle");
        assertThat(refusal.given()).isEqualTo(text);
        assertThat(refusal.problem()).contains(problem);
        assertThat(refusal.position()).hasValue(position);
        assertThat(refusal.allowed()).isNotEmpty();
    }

    @Test
    void suggestsTheWordThatWasMeant() {
        assertThat(Refusals.of(() -> Vehicle.parse("frnt 1250 kg")).suggestions())
                .contains("front");
    }

    @Test
    void tellsTheRangeOfAMass() {
        assertThat(Refusals.of(() -> Vehicle.parse("mass 5 kg")).allowed()).contains("100 to");
    }

    @ParameterizedTest
    @ValueSource(doubles = {100.0, 20_000.0})
    void takesTheLimitsOfTheMassesThemselves(double kilograms) {
        Optional<Mass> mass = Optional.of(Mass.ofKilograms(kilograms));

        assertThat(new Vehicle("truck", mass, mass, mass, true, Optional.empty()).mass())
                .isEqualTo(mass);
    }

    @ParameterizedTest
    @ValueSource(doubles = {99.9, 20_000.1})
    void refusesImpossibleMassesByTheirName(double kilograms) {
        Optional<Mass> mass = Optional.of(Mass.ofKilograms(kilograms));
        Optional<Mass> none = Optional.empty();

        assertThat(Refusals.of(() -> new Vehicle("x", mass, none, none, false, Optional.empty()))
                        .subject())
                .isEqualTo("vehicle mass");
        assertThat(Refusals.of(() -> new Vehicle("x", none, mass, none, false, Optional.empty()))
                        .subject())
                .isEqualTo("front axle load");
        assertThat(Refusals.of(() -> new Vehicle("x", none, none, mass, false, Optional.empty()))
                        .subject())
                .isEqualTo("rear axle load");
    }
}
