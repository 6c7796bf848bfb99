package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.finding.Verdict;
import drivetrain.gearing.HubReduction;
import drivetrain.gearing.Speedometer;
import drivetrain.gearing.SpeedometerDrive;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers against facts from outside; each test names its source. */
class AssessmentWorkedExamplesTest {

    /** The trade's constant rpm = mph x ratio x 336.135 / diameter in inches: derived, 63360 / (60 pi). It is printed to a thousandth. */
    @ParameterizedTest
    @CsvSource({"55, 4.56, 0.75, 33.5", "65, 3.73, 0.67, 30.8", "70, 4.10, 1.00, 31.6", "30, 5.13, 1.40, 36.0"})
    void agreesWithTheConstantOfTheTrade(double mph, double axle, double gear, double diameterInches) {
        Combination build = Builds.of(Builds.CRAWLER
                .with(Slot.TRANSMISSION, "5.00 " + gear)
                .with(Slot.REAR_AXLE, Double.toString(axle))
                .with(
                        Slot.TIRE,
                        "285/75R16 122/119Q rollout "
                                + Length.ofInches(Math.PI * diameterInches).toMillimeters() + " mm"));
        double rpm = mph * axle * gear * 336.135 / diameterInches;

        assertThat(CruiseAnswer.at(build, Speed.ofMilesPerHour(mph), GearChoice.TOP)
                        .orThrow()
                        .engineSpeed()
                        .toRpm())
                .isCloseTo(rpm, within(rpm * 2e-6));
        assertThat(63360.0 / (60.0 * Math.PI)).isCloseTo(336.135, within(5e-4));
    }

    /**
     * A radial tire rolls 3.05 overall diameters a turn, not pi: ETRTO Standards Manual and UN GTR 15 annex 2, clause from memory, confirmed by open measurements. Pi times
     * the overall diameter would read the engine speed low by 1 - 3.05 / pi, 2.9 %.
     */
    @ParameterizedTest
    @ValueSource(strings = {"285/75R16 122/119Q", "265/70R17 115S", "235/85R16 120/116Q"})
    void turnsThreePercentFasterThanTheOverallDiameterSays(String size) {
        Combination build = Builds.of(Builds.CRAWLER.with(Slot.TIRE, size));
        CruiseAnswer answer = CruiseAnswer.at(build, Speed.ofMilesPerHour(65.0), GearChoice.TOP)
                .orThrow();
        double inches = TireAnswer.of(build)
                .orThrow()
                .overallDiameter()
                .orThrow()
                .diameter()
                .toInches();
        double naive = 65.0 * answer.gear().totalRatio() * 336.135 / inches;

        assertThat(answer.engineSpeed().toRpm() / naive).isCloseTo(1.030, within(0.0005));
    }

    /** The crawl ratio is the product of the shortest ratios: common practice, no source. Products worked out by hand. */
    @ParameterizedTest
    @CsvSource({
        "5.61 3.04 1.67 1.00 0.75, 1.00 4.00 part-time, 4.56, none, 102.3264",
        "4.38 2.49 1.56 1.15 1.00 0.76, 1.00 2.72 part-time, 4.10, none, 48.84576",
        "4.03 2.36 1.53 1.15 0.85 0.67, 1.00 2.50 part-time, 4.10, 24/16, 61.96125"
    })
    void multipliesTheCrawlRatio(String gears, String transfer, String axle, String hubs, double product) {
        Combination build = Builds.of(Builds.CRAWLER
                .with(Slot.TRANSMISSION, gears)
                .with(Slot.TRANSFER, transfer)
                .with(Slot.REAR_AXLE, axle)
                .with(Slot.HUBS, hubs));

        assertThat(CrawlAnswer.of(build).orThrow().crawl().ratio()).isCloseTo(product, within(1e-9));
    }

    /** UN Regulation No. 39, 5.3; the resource names where its pairs come from. */
    @ParameterizedTest
    @CsvFileSource(resources = "/drivetrain/gearing/un-r39.csv", useHeadersInDisplayName = true)
    void keepsAndLeavesTheLimitsOfUnRegulation39(double trueKmh, double leastKmh, double mostKmh) {
        assertThat(verdict(trueKmh, leastKmh)).isEqualTo(Verdict.MET);
        assertThat(verdict(trueKmh, mostKmh)).isEqualTo(Verdict.MET);
        assertThat(verdict(trueKmh, leastKmh - 0.001)).isEqualTo(Verdict.EXCEEDED);
        assertThat(verdict(trueKmh, mostKmh + 0.001)).isEqualTo(Verdict.EXCEEDED);
    }

    private static Verdict verdict(double trueKmh, double shownKmh) {
        Speedometer shows = new Speedometer(
                SpeedometerDrive.WHEELS,
                Length.ofMillimeters(2457.0).times(shownKmh / trueKmh),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty());
        SpeedometerAnswer answer = SpeedometerAnswer.of(Builds.of(Builds.TOURER, Builds.wagon(shows)))
                .orThrow();
        return answer.speedometer()
                .unR39At(
                        Speed.ofKilometersPerHour(trueKmh),
                        answer.rolling().circumference(),
                        answer.train().rear().ratio(),
                        HubReduction.none())
                .verdict();
    }
}
