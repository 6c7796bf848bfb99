package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Slot;
import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.gearing.GearingCautions;
import drivetrain.gearing.Speedometer;
import drivetrain.gearing.SpeedometerDrive;
import drivetrain.quantity.Length;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class SpeedometerAnswerTest {

    @Test
    void readsByAxleAndTire() {
        SpeedometerAnswer answer = SpeedometerAnswer.of(Builds.tourer()).orThrow();
        double shownOverTrue = 2400.0 / 2457.0 * (41.0 / 11.0) / (41.0 / 10.0);

        assertThat(answer.readings())
                .hasSize(7)
                .allSatisfy(reading ->
                        assertThat(reading.shown().ratioTo(reading.actual())).isCloseTo(shownOverTrue, within(1e-12)));
        assertThat(answer.readings()).extracting(reading -> reading.actual()).isSorted();
    }

    @Test
    void choosesADrivenGearWhereThereIsOne() {
        Speedometer wheels = new Speedometer(
                SpeedometerDrive.WHEELS,
                Length.ofMillimeters(2457.0),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty());

        assertThat(SpeedometerAnswer.of(Builds.tourer()).orThrow().drivenGears())
                .isPresent();
        assertThat(SpeedometerAnswer.of(Builds.of(Builds.TOURER, Builds.wagon(wheels)))
                        .orThrow()
                        .drivenGears())
                .isEmpty();
    }

    @Test
    void findsThatItShowsTooLittle() {
        assertThat(SpeedometerAnswer.of(Builds.tourer()).orThrow().findings())
                .hasSize(2)
                .extracting(Finding::verdict)
                .first()
                .isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void saysWhatItRestsOn() {
        SpeedometerAnswer answer = SpeedometerAnswer.of(Builds.tourer()).orThrow();

        assertThat(answer.assumptions()).isEqualTo(answer.rolling().assumptions());
        assertThat(answer.cautions()).isEqualTo(GearingCautions.speedometer());
        Whole.assertWorkedOut(answer);
    }

    @Test
    void saysWhatIsMissing() {
        assertThat(SpeedometerAnswer.of(Builds.of(Builds.TOURER.without(Slot.VEHICLE)))
                        .reason())
                .contains("no vehicle is chosen");
        assertThat(SpeedometerAnswer.of(Builds.crawler()).reason())
                .contains("the vehicle's speedometer is not described");
        assertThat(SpeedometerAnswer.of(Builds.of(Builds.TOURER.without(Slot.TIRE)))
                        .reason())
                .contains("no tire is chosen");
        assertThat(SpeedometerAnswer.of(Builds.of(Builds.TOURER.without(Slot.REAR_AXLE)))
                        .reason())
                .contains("no rear axle is chosen");
    }
}
