package drivetrain.combination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.atmosphere.Air;
import drivetrain.quantity.Area;
import drivetrain.quantity.Length;
import drivetrain.quantity.MomentOfInertia;
import drivetrain.quantity.Temperature;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConditionsTest {

    private static Combination of(Specification order) {
        return Combination.resolve(order, Catalog.empty());
    }

    @Test
    void readsSurfaceAndAir() {
        Combination driven =
                of(Specification.empty().drivenOn("wet asphalt").drivenIn("temperature 30 degC altitude 1500 m"));
        assertThat(driven.surface().orElseThrow().name()).isEqualTo("wet-asphalt");
        assertThat(driven.air())
                .contains(Air.standardAt(Length.ofMeters(1500.0)).withTemperature(Temperature.ofCelsius(30.0)));
        assertThat(of(Specification.empty()).surface()).isEmpty();
        assertThat(of(Specification.empty()).air()).isEmpty();
    }

    @Test
    void eitherPartOfTheAirMayBeLeftOut() {
        assertThat(of(Specification.empty().drivenIn("altitude 5000 ft")).air())
                .contains(Air.standardAt(Length.ofFeet(5000.0)));
        assertThat(of(Specification.empty().drivenIn("temperature 0 degC"))
                        .air()
                        .orElseThrow()
                        .temperature()
                        .toCelsius())
                .isCloseTo(0.0, within(1e-9));
        assertThat(of(Specification.empty().drivenIn("standard")).air()).contains(Air.standard());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "~ ~; 0; describes no air",
                "height 5 m; 0; does not describe air",
                "altitude; 8; has nothing behind it",
                "altitude 1 m altitude 2 m; 13; stands there twice",
                "temperature 1 degC temperature 2 degC; 19; stands there twice",
                "altitude 9000 m; 9; is out of range",
                "temperature 80 degC; 12; is out of range",
                "altitude high; 9; does not start with a number"
            })
    void locatesEveryFault(String text, int position, String problem) {
        drivetrain.refusal.Refusal refusal =
                Refusals.of(() -> of(Specification.empty().drivenIn(text)));
        assertThat(refusal.problem()).contains(problem);
        assertThat(refusal.position()).hasValue(position);
    }

    @Test
    void aVehicleReadsItsRoadData() {
        RoadData data = Vehicle.parse(
                        "mass 2240 kg drag 15 ft2 wheelbase 113 in cg 30 in split 53 % engine-inertia 0.3 kg m2 wheel-inertia 2 kg m2")
                .road();
        assertThat(data.dragArea()).contains(Area.ofSquareFeet(15.0));
        assertThat(data.frontShare()).hasValue(0.53);
        assertThat(data.wheelbase()).contains(Length.ofInches(113.0));
        assertThat(data.centerOfGravity()).contains(Length.ofInches(30.0));
        assertThat(data.engineInertia()).contains(MomentOfInertia.ofKilogramSquareMeters(0.3));
        assertThat(data.wheelInertia()).contains(MomentOfInertia.ofKilogramSquareMeters(2.0));
        assertThat(Vehicle.parse("mass 2240 kg").road()).isEqualTo(RoadData.unknown());
    }

    @Test
    void refusesInertiasOutOfRange() {
        Optional<MomentOfInertia> none = Optional.of(MomentOfInertia.ofKilogramSquareMeters(0.0));
        assertThat(Refusals.of(() -> new RoadData(
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                OptionalDouble.empty(),
                                none,
                                Optional.empty()))
                        .allowed())
                .isEqualTo("0.001 to 10 kg m2");
        assertThat(Refusals.of(() -> new RoadData(
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                OptionalDouble.empty(),
                                Optional.empty(),
                                Optional.of(MomentOfInertia.ofKilogramSquareMeters(60.0))))
                        .subject())
                .contains("wheel");
    }
}
