package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drivetrain.combination.Slot;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.Range;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GearChoiceTest {

    private static final GearTrain PLAIN = Builds.crawler().gearTrain().orThrow();
    private static final GearTrain OVERDRIVEN =
            Builds.of(Builds.CRAWLER.with(Slot.OVERDRIVE, "0.78")).gearTrain().orThrow();
    private static final GearTrain UNDERDRIVEN =
            Builds.of(Builds.CRAWLER.with(Slot.OVERDRIVE, "1.25")).gearTrain().orThrow();

    @Test
    void findsGearsByNumberAndRange() {
        DriveGear third = GearChoice.of(3, Range.LOW).in(PLAIN).orThrow();

        assertThat(third.number()).isEqualTo(3);
        assertThat(third.range()).isEqualTo(Range.LOW);
    }

    @Test
    void findsTheTallestGearOfARange() {
        assertThat(GearChoice.TOP.in(PLAIN).orThrow().number()).isEqualTo(5);
        assertThat(GearChoice.TOP.in(PLAIN).orThrow().range()).isEqualTo(Range.HIGH);
        assertThat(GearChoice.topOf(Range.LOW).in(PLAIN).orThrow().range()).isEqualTo(Range.LOW);
    }

    @Test
    void engagesTheAuxiliaryUnitForTheTallestGearOnlyWhereItMakesItTaller() {
        assertThat(GearChoice.TOP.in(OVERDRIVEN).orThrow().auxiliaryEngaged()).isTrue();
        assertThat(GearChoice.TOP.in(UNDERDRIVEN).orThrow().auxiliaryEngaged()).isFalse();
    }

    @Test
    void engagesTheAuxiliaryUnitOnDemand() {
        GearChoice fourth = GearChoice.of(4, Range.HIGH).withAuxiliary();

        assertThat(fourth.in(OVERDRIVEN).orThrow().auxiliaryEngaged()).isTrue();
        assertThat(fourth.in(PLAIN).reason()).contains("no overdrive is fitted");
    }

    @Test
    void findsNoLowRangeWhereThereIsNone() {
        GearTrain single = Builds.of(Builds.CRAWLER.with(Slot.TRANSFER, "none"))
                .gearTrain()
                .orThrow();

        assertThat(GearChoice.of(1, Range.LOW).in(single).reason()).contains("the transfer case has no low range");
        assertThat(GearChoice.of(1, Range.HIGH).in(single).value()).isPresent();
    }

    @Test
    void findsNoGearAboveTheLast() {
        assertThat(GearChoice.of(6, Range.HIGH).in(PLAIN).reason()).contains("the transmission has 5 forward gears");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1})
    void refusesNumbersBelowOne(int number) {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> GearChoice.of(number, Range.HIGH))
                .withMessageContaining("is not a forward gear");
    }
}
