package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Frequency;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VibrationOrdersTest {

    private static List<VibrationOrder> all() {
        List<VibrationOrder> all = new ArrayList<>(VibrationOrders.ofWheels(AngularSpeed.ofRpm(600)));
        all.addAll(VibrationOrders.ofShaft("rear driveshaft", AngularSpeed.ofRpm(2400)));
        all.addAll(VibrationOrders.ofEngine(AngularSpeed.ofRpm(1700), OptionalInt.of(8)));
        return all;
    }

    @ParameterizedTest
    @CsvSource({"1, 0.5", "2, 1", "4, 2", "6, 3", "8, 4", "12, 6"})
    void aFourStrokeEngineFiresHalfItsCylindersATurn(int cylinders, double order) {
        List<VibrationOrder> orders = VibrationOrders.ofEngine(AngularSpeed.ofRpm(1200), OptionalInt.of(cylinders));

        assertThat(orders.get(orders.size() - 1).order()).isEqualTo(order);
        assertThat(orders.get(orders.size() - 1).frequency().toHertz()).isCloseTo(20 * order, within(1e-9));
    }

    @Test
    void leavesFiringOutWhereTheCylindersAreUnknown() {
        assertThat(VibrationOrders.ofEngine(AngularSpeed.ofRpm(1200), OptionalInt.empty()))
                .extracting(VibrationOrder::cause)
                .doesNotContain("firing");
        assertThatThrownBy(() -> VibrationOrders.ofEngine(AngularSpeed.ofRpm(1200), OptionalInt.of(0)))
                .hasMessageContaining("1 to 16");
        assertThatThrownBy(() -> VibrationOrders.ofEngine(AngularSpeed.ofRpm(1200), OptionalInt.of(17)))
                .hasMessageContaining("1 to 16");
    }

    @Test
    void findsThePartThatFitsBest() {
        List<Suspect> suspects = Suspect.of(Frequency.ofHertz(41), 0.08, all());

        assertThat(suspects).isNotEmpty();
        assertThat(suspects.get(0).order().part()).isEqualTo("rear driveshaft");
        assertThat(suspects.get(0).order().order()).isEqualTo(1.0);
        assertThat(suspects.get(0).mismatch()).isCloseTo(40.0 / 41 - 1, within(1e-9));
        assertThat(Suspect.of(Frequency.ofHertz(500), 0.08, all())).isEmpty();
    }

    @Test
    void ordersSuspectsByMismatch() {
        List<Suspect> suspects = Suspect.of(Frequency.ofHertz(29), 0.4, all());

        assertThat(suspects).isSortedAccordingTo(java.util.Comparator.comparingDouble(s -> Math.abs(s.mismatch())));
        assertThat(suspects).hasSizeGreaterThan(2);
    }

    @Test
    void refusesImpossibleMeasurements() {
        assertThatThrownBy(() -> Suspect.of(Frequency.ofHertz(0), 0.1, all()))
                .hasMessageContaining("measured frequency");
        assertThatThrownBy(() -> Suspect.of(Frequency.ofHertz(20), 0, all())).hasMessageContaining("tolerance");
        assertThatThrownBy(() -> Suspect.of(Frequency.ofHertz(20), 0.6, all())).hasMessageContaining("tolerance");
        assertThatThrownBy(() -> Suspect.of(Frequency.ofHertz(20), Double.NaN, all()))
                .hasMessageContaining("tolerance");
    }
}
