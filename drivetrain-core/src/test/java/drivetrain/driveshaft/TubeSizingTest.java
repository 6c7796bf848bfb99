package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import org.junit.jupiter.api.Test;

class TubeSizingTest {

    private static final AngularSpeed SPEED = AngularSpeed.ofRpm(5500);
    private static final Length LENGTH = Length.ofMillimeters(1300);
    private static final ShaftMaterial STEEL = ShaftMaterial.parse("steel");

    @Test
    void theSmallestStockTubeWillDoAndTheNextSmallerWillNot() {
        TubeSizing sizing = TubeSizing.of(SPEED, LENGTH, ShaftHouse.packed());
        TubeSizing.Row smallest = sizing.smallest().orElseThrow();

        assertThat(smallest.allowed()).isGreaterThanOrEqualTo(SPEED);
        assertThat(sizing.rows()).hasSameSizeAs(StockTubes.all());
        for (TubeSizing.Row row : sizing.rows()) {
            assertThat(row.willDo()).isEqualTo(row.longest().compareTo(LENGTH) >= 0);
            if (row.stock().tube().diameter().isLessThan(smallest.stock().tube().diameter())) {
                assertThat(row.willDo()).isFalse();
            }
        }
    }

    @Test
    void theLongestTubeRunsAtWhatIsAllowed() {
        Tube tube = Tube.parse("3.5 in x 0.083 in");
        Length longest = TubeSizing.longest(tube, STEEL, SPEED, ShaftHouse.packed());

        assertThat(ShaftSpeedChecks.allowed(CriticalSpeed.ofUniform(tube, STEEL, longest), ShaftHouse.packed())
                        .toRpm())
                .isCloseTo(5500, within(1e-6));
    }

    @Test
    void solvesForTheSmallestDiameter() {
        Length wall = Length.ofMillimeters(2.1);
        Length diameter = TubeSizing.smallestDiameter(wall, STEEL, LENGTH, SPEED, ShaftHouse.packed())
                .orThrow();

        assertThat(ShaftSpeedChecks.allowed(
                                CriticalSpeed.ofUniform(Tube.of(diameter, wall), STEEL, LENGTH), ShaftHouse.packed())
                        .toRpm())
                .isCloseTo(5500, within(0.01));
        assertThat(TubeSizing.smallestDiameter(
                                wall, STEEL, Length.ofMillimeters(60), AngularSpeed.ofRpm(100), ShaftHouse.packed())
                        .orThrow())
                .isEqualTo(Length.ofMillimeters(5));
        assertThat(TubeSizing.smallestDiameter(
                                wall, STEEL, Length.ofMeters(5), AngularSpeed.ofRpm(20_000), ShaftHouse.packed())
                        .reason())
                .isPresent();
        assertThat(TubeSizing.smallestDiameter(Length.ofMillimeters(300), STEEL, LENGTH, SPEED, ShaftHouse.packed())
                        .reason())
                .isPresent();
    }

    @Test
    void saysWhenNoStockTubeWillDo() {
        TubeSizing sizing = TubeSizing.of(AngularSpeed.ofRpm(20_000), Length.ofMeters(2), ShaftHouse.packed());

        assertThat(sizing.smallest()).isEmpty();
        assertThat(sizing.working().steps()).hasSize(1);
        assertThat(TubeSizing.of(SPEED, LENGTH, ShaftHouse.packed()).working().steps())
                .hasSizeGreaterThan(4);
    }

    @Test
    void refusesImpossibleSpeedsAndLengths() {
        assertThatThrownBy(() -> TubeSizing.of(AngularSpeed.ofRpm(0), LENGTH, ShaftHouse.packed()))
                .hasMessageContaining("greater than zero");
        assertThatThrownBy(() -> TubeSizing.of(AngularSpeed.ofRpm(5_500_000), LENGTH, ShaftHouse.packed()))
                .hasMessageContaining("range");
        assertThatThrownBy(() -> TubeSizing.of(SPEED, Length.ofMeters(0), ShaftHouse.packed()))
                .hasMessageContaining("50 to 5000 mm");
        assertThatThrownBy(() -> TubeSizing.of(SPEED, Length.ofMeters(1300), ShaftHouse.packed()))
                .hasMessageContaining("50 to 5000 mm");
        assertThatThrownBy(() -> TubeSizing.smallestDiameter(
                        Length.ofMillimeters(-2), STEEL, LENGTH, SPEED, ShaftHouse.packed()))
                .hasMessageContaining("tube wall");
    }

    @Test
    void everyStockTubeIsOfAStockMetalAndUnique() {
        assertThat(StockTubes.all())
                .extracting(stock -> stock.tube().text() + stock.metal().name())
                .doesNotHaveDuplicates();
        assertThat(StockTubes.all()).allSatisfy(stock -> {
            assertThat(StockMaterials.all()).contains(stock.metal());
            assertThat(stock.source().citation()).isNotBlank();
        });
    }
}
