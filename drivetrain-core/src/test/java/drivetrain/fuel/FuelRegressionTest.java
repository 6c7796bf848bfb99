package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Length;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Our own figures, tight. */
class FuelRegressionTest {

    @Test
    void keepsTheOperatingPointOfAReturnSystem() {
        SupplyPoint point = Supplies.supply(
                        Regulator.Layout.RETURN, 43.5, 13.5, Optional.of(Wire.ofGauge(Length.ofMeters(5.0), 12)))
                .capacity()
                .orThrow();
        assertThat(point.flow().toLitersPerHour()).isCloseTo(234.8035, within(1e-3));
        assertThat(point.added().toPsi()).isCloseTo(47.56148, within(1e-4));
        assertThat(point.voltage().toVolts()).isCloseTo(13.075423, within(1e-5));
    }
}
