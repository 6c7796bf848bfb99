package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.AngularSpeed;
import drivetrain.refusal.RefusedException;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ConverterTest {

    private static final AngularSpeed KINEMATIC = AngularSpeed.ofRpm(1940.0);

    @Test
    void turnsFasterThanTheGearsSayByTheSpeedRatio() {
        Converter converter = new Converter(OptionalDouble.empty(), false, OptionalDouble.of(0.97));
        assertThat(converter.slipping(KINEMATIC).orElseThrow().toRpm()).isCloseTo(2000.0, within(1e-9));
        assertThat(converter.slip().orElseThrow()).isCloseTo(0.03, within(1e-12));
    }

    @Test
    void knowsNothingUnlessTold() {
        Converter converter = Converter.unknown();
        assertThat(converter.slipping(KINEMATIC)).isEmpty();
        assertThat(converter.slip()).isEmpty();
        assertThat(converter.stallMultiplication()).isEmpty();
        assertThat(converter.text()).isEqualTo("converter no lockup");
    }

    @Test
    void flagsSpeedsOfAConverterThatNeverLocks() {
        assertThat(Converter.unknown().speedAssumptions())
                .singleElement()
                .satisfies(assumption -> assertThat(assumption.flagged()).isTrue());
        assertThat(new Converter(OptionalDouble.empty(), true, OptionalDouble.empty()).speedAssumptions())
                .singleElement()
                .satisfies(assumption -> assertThat(assumption.flagged()).isFalse());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.99, 5.01, Double.NaN})
    void refusesImpossibleStallRatio(double ratio) {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new Converter(OptionalDouble.of(ratio), true, OptionalDouble.empty()))
                .withMessageContaining("1 to 5");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.49, 1.01, Double.NaN})
    void refusesImpossibleSpeedRatio(double ratio) {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new Converter(OptionalDouble.empty(), true, OptionalDouble.of(ratio)))
                .withMessageContaining("0.5 to 1");
    }

    @Test
    void leavesAClutchWithoutSlipOrMultiplication() {
        Clutch clutch = new Clutch();
        assertThat(clutch.slipping(KINEMATIC)).isEmpty();
        assertThat(clutch.stallMultiplication()).hasValue(1.0);
        assertThat(clutch.speedAssumptions()).isEmpty();
        assertThat(clutch.text()).isEqualTo("clutch");
    }
}
