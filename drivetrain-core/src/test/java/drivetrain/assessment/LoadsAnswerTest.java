package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Torque;
import drivetrain.road.PartLoad;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadsAnswerTest {

    private static final Specification TOURER = Builds.TOURER;

    private static Combination of(Specification order) {
        return Builds.of(order);
    }

    @Test
    void everyPartSeesTheLesserOfEngineAndSlipInItsWorstGear() {
        LoadsAnswer loads = LoadsAnswer.of(of(TOURER)).orThrow();
        PartLoad input = part(loads, "transmission input");
        assertThat(input.limit()).contains(PartLoad.Limit.ENGINE);
        PartLoad shaft = part(loads, "rear half-shaft");
        assertThat(shaft.limit()).contains(PartLoad.Limit.SLIP);
        assertThat(part(loads, "rear half-shaft, axle locked")
                        .governing()
                        .orThrow()
                        .si())
                .isCloseTo(2.0 * shaft.governing().orThrow().si(), within(1e-6));
        assertThat(loads.path().weakest().orElseThrow().part()).isEqualTo("rear driveshaft");
        assertThat(loads.findings())
                .anySatisfy(finding -> assertThat(finding.statement()).contains("rear ring and pinion"));
    }

    @Test
    void aHubReductionUnloadsHalfShaftsAndDriveshafts() {
        LoadsAnswer plain = LoadsAnswer.of(of(TOURER)).orThrow();
        LoadsAnswer portal = LoadsAnswer.of(of(TOURER.with(Slot.HUBS, "24/16 efficiency 100 %")))
                .orThrow();
        assertThat(part(portal, "rear half-shaft").slipLimited().orThrow().si())
                .isCloseTo(
                        part(plain, "rear half-shaft").slipLimited().orThrow().si() / 1.5, within(1e-6));
    }

    @Test
    void ratingsAreCheckedAndTheWeakestLinkIsNamed() {
        Specification rated = TOURER.with(Slot.REAR_AXLE, "41/11 ring-rating 3000 lb-ft shaft-rating 9000 lb-ft")
                .with(Slot.TRANSFER, "1.00 2.72 part-time rating 9000 lb-ft output-rating 9000 lb-ft");
        LoadsAnswer loads = LoadsAnswer.of(of(rated)).orThrow();
        assertThat(loads.path().weakest().orElseThrow().part()).isEqualTo("rear ring and pinion");
        assertThat(Finding.worst(loads.findings())).isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void anOpenCenterDifferentialHalvesAndTheLighterAxleSetsTheSlip() {
        LoadsAnswer open =
                LoadsAnswer.of(of(TOURER.with(Slot.TRANSFER, "1.00 2.72 open"))).orThrow();
        assertThat(part(open, "rear driveshaft").slipLimited().orThrow())
                .isEqualTo(part(open, "front driveshaft").slipLimited().orThrow());
        LoadsAnswer rear =
                LoadsAnswer.of(of(TOURER.with(Slot.TRANSFER, "none"))).orThrow();
        assertThat(rear.path().parts()).noneMatch(load -> load.part().startsWith("front"));
        assertThat(rear.path().parts()).noneMatch(load -> load.part().equals("transfer case input"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "converter stall 2.0; torque at stall",
                "converter stall 2.0 stall-speed 2300 rpm; converter curve",
                "clutch clutch-rating 300 lb-ft; shock"
            })
    void theTorqueAtTheInputSaysWhatItRestsOn(String coupling, String subject) {
        Specification order = TOURER.with(Slot.TRANSMISSION, "4.03 2.36 1.53 1.15 0.85 0.67 " + coupling);
        assertThat(LoadsAnswer.of(of(order)).orThrow().assumptions())
                .extracting(Assumption::subject)
                .contains(subject);
    }

    @Test
    void holdsTheTransmissionsOutputAgainstItsRating() {
        LoadsAnswer loads = LoadsAnswer.of(of(TOURER.with(
                        Slot.TRANSMISSION,
                        "4.03 2.36 1.53 1.15 0.85 0.67 converter stall 2.0 output-rating 2000 lb-ft")))
                .orThrow();

        assertThat(part(loads, "transmission output").rating()).contains(Torque.ofPoundFeet(2000.0));
        assertThat(loads.findings()).extracting(Finding::checked).contains("torque in the transmission output");
    }

    @Test
    void anUnknownConverterLeavesTheEngineSideOpen() {
        LoadsAnswer loads = LoadsAnswer.of(of(TOURER.with(Slot.TRANSMISSION, "4.03 2.36 1.53 1.00 converter")))
                .orThrow();
        assertThat(loads.input().reason())
                .hasValueSatisfying(why -> assertThat(why).contains("converter stall 2.0"));
        assertThat(part(loads, "rear driveshaft").limit()).contains(PartLoad.Limit.SLIP);
        TopAnswer top = TopAnswer.of(of(TOURER.with(Slot.TRANSMISSION, "4.03 2.36 1.53 1.00 converter")))
                .orThrow();
        assertThat(top.assumptions())
                .extracting(Assumption::statement)
                .anyMatch(statement -> statement.contains("taken as locked"));
    }

    private static PartLoad part(LoadsAnswer loads, String name) {
        Optional<PartLoad> found = loads.path().parts().stream()
                .filter(load -> load.part().equals(name))
                .findFirst();
        return found.orElseThrow();
    }
}
