package drivetrain.tire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of this library, held tight so that no change of them goes unseen. */
class TireRegressionTest {

    @ParameterizedTest
    @CsvSource({
        "235/85R16, 805.9, 2457.995, 654.738517",
        "265/75R16, 803.9, 2451.895, 656.367422",
        "285/75R16, 833.9, 2543.395, 632.754252",
        "35x12.50R17LT, 876.3, 2672.715, 602.138275",
        "7.50-16, 806.0, 2408.130612, 668.295977",
        "7.50R16, 802.0, 2446.1, 657.922407",
        "205R16, 736.0, 2244.8, 716.920884",
    })
    void keepsItsFigures(String size, double diameter, double circumference, double perMile) {
        Tire tire = Tire.parse(size);

        assertThat(tire.overallDiameter().orThrow().diameter().toMillimeters())
                .isCloseTo(diameter, withinPercentage(1e-6));
        assertThat(tire.rolling().orThrow().circumference().toMillimeters())
                .isCloseTo(circumference, withinPercentage(1e-6));
        assertThat(tire.rolling().orThrow().revolutions().toPerMile()).isCloseTo(perMile, withinPercentage(1e-6));
    }
}
