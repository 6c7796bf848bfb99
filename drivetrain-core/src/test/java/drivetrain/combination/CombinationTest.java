package drivetrain.combination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Outcome;
import drivetrain.gearing.AxleRatio;
import drivetrain.gearing.HubReduction;
import drivetrain.gearing.Overdrive;
import drivetrain.gearing.Range;
import drivetrain.quantity.Speed;
import drivetrain.refusal.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CombinationTest {

    private static final Specification WHOLE = Specification.empty()
            .with(Slot.VEHICLE, "mass 2150 kg front 1250 kg rear 1700 kg")
            .with(Slot.ENGINE, "400 hp at 5500 rpm, 410 lb-ft at 4200 rpm, idle 700 rpm, max 6200 rpm")
            .with(Slot.TRANSMISSION, "3.60 2.20 1.40 1.00 0.80 reverse 3.50")
            .with(Slot.OVERDRIVE, "0.78")
            .with(Slot.TRANSFER, "1.00 2.50 part-time")
            .with(Slot.REAR_AXLE, "41/10")
            .with(Slot.FRONT_AXLE, "37/9")
            .with(Slot.HUBS, "24/16")
            .with(Slot.TIRE, "285/75R16 122/119Q rollout 2510 mm")
            .cruisingAt("65 mph");

    private static Combination resolve(Specification order) {
        return Combination.resolve(order, Catalog.empty());
    }

    @Test
    void looksEveryChoiceUp() {
        Combination all = resolve(WHOLE);

        assertThat(all.specification()).isEqualTo(WHOLE);
        assertThat(all.limits()).isEqualTo(HouseLimits.packed());
        assertThat(all.vehicle()).isPresent();
        assertThat(all.engine()).isPresent();
        assertThat(all.transmission()).isPresent();
        assertThat(all.overdrive().orElseThrow().item()).isEqualTo(Overdrive.parse("0.78"));
        assertThat(all.transfer()).isPresent();
        assertThat(all.rearAxle().orElseThrow().item()).isEqualTo(AxleRatio.parse("41/10"));
        assertThat(all.frontAxle().orElseThrow().item()).isEqualTo(AxleRatio.parse("37/9"));
        assertThat(all.hubs().orElseThrow().item()).isEqualTo(HubReduction.parse("24/16"));
        assertThat(all.cruise()).contains(Speed.ofMilesPerHour(65.0));
        assertThat(all.needEngine().value()).isPresent();
        assertThat(all.needTire().value()).isPresent();
        assertThat(all.needVehicle().value()).isPresent();
    }

    @Test
    void connectsTheGearTrainFromTransmissionToHubs() {
        double lowest = resolve(WHOLE)
                .gearTrain()
                .orThrow()
                .gear(1, Range.LOW)
                .orElseThrow()
                .totalRatio();

        assertThat(lowest).isCloseTo(3.60 * 2.50 * 4.1 * 1.5, within(1e-12));
    }

    @Test
    void fitsNoOverdriveAndNoHubReductionUnlessChosen() {
        Combination plain = resolve(WHOLE.without(Slot.OVERDRIVE).without(Slot.HUBS));

        assertThat(plain.overdrive()).isEmpty();
        assertThat(plain.hubs()).isEmpty();
        assertThat(plain.gearTrain().orThrow().overdrive().isFitted()).isFalse();
        assertThat(plain.gearTrain().orThrow().hubs().isFitted()).isFalse();
    }

    @ParameterizedTest
    @EnumSource(names = {"TRANSMISSION", "TRANSFER", "REAR_AXLE"})
    void saysWhichPartOfTheGearTrainIsMissing(Slot slot) {
        assertThat(resolve(WHOLE.without(slot)).gearTrain().reason()).contains("no " + slot.word() + " is chosen");
    }

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"TRANSMISSION", "TRANSFER", "REAR_AXLE"})
    void connectsTheGearTrainWithoutTheOthers(Slot slot) {
        assertThat(resolve(WHOLE.without(slot)).gearTrain().value()).isPresent();
    }

    @Test
    void saysWhatIsMissingWhenNothingIsChosen() {
        Combination none = resolve(Specification.empty());

        assertThat(none.vehicle()).isEmpty();
        assertThat(none.cruise()).isEmpty();
        assertThat(none.frontTire()).isEmpty();
        assertThat(none.needEngine()).isEqualTo(Outcome.notEvaluated("no engine is chosen"));
        assertThat(none.needTire()).isEqualTo(Outcome.notEvaluated("no tire is chosen"));
        assertThat(none.needVehicle()).isEqualTo(Outcome.notEvaluated("no vehicle is chosen"));
    }

    @ParameterizedTest
    @EnumSource(Slot.class)
    void refusesByTheWordOfTheSlot(Slot slot) {
        Refusal refusal = Refusals.of(() -> resolve(WHOLE.with(slot, "nonsense")));

        assertThat(refusal.subject()).isEqualTo(slot.word());
        assertThat(refusal.given()).isEqualTo("nonsense");
    }

    @Test
    void keepsTheRestOfARefusal() {
        Refusal refusal = Refusals.of(() -> resolve(WHOLE.with(Slot.FRONT_AXLE, "41/10 x")));

        assertThat(refusal.subject()).isEqualTo("front axle");
        assertThat(refusal.position()).hasValue(6);
    }

    @Test
    void fallsBackToTheTireForTheFront() {
        Combination same = resolve(WHOLE);
        Combination other = resolve(WHOLE.with(Slot.FRONT_TIRE, "265/75R16"));

        assertThat(same.frontTire()).isEqualTo(same.tire());
        assertThat(other.frontTire().orElseThrow().name()).isEqualTo("265/75R16");
        assertThat(other.tire()).isEqualTo(same.tire());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 mph", "-5 mph"})
    void refusesACruiseSpeedThatIsNotGreaterThanZero(String speed) {
        Refusal refusal = Refusals.of(() -> resolve(WHOLE.cruisingAt(speed)));

        assertThat(refusal.subject()).isNotEmpty();
        assertThat(refusal.sentence()).contains("0");
    }

    @Test
    void refusesACruiseSpeedThatIsNone() {
        assertThat(Refusals.of(() -> resolve(WHOLE.cruisingAt("fast"))).given()).isEqualTo("fast");
    }
}
