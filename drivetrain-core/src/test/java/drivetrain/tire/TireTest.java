package drivetrain.tire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drivetrain.finding.Assumption;
import drivetrain.finding.SourceClass;
import drivetrain.quantity.Length;
import drivetrain.quantity.RevolutionsPerDistance;
import drivetrain.refusal.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TireTest {

    private static RollingCircumference rolling(String tire) {
        return Tire.parse(tire).rolling().orThrow();
    }

    private static OverallDiameter overall(String tire) {
        return Tire.parse(tire).overallDiameter().orThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "285/75R16 122/119Q, 285/75R16 122/119Q",
        "285/75r16 ROLLOUT 2510mm, 285/75R16 rollout 2510 mm",
        "285/75R16 roll-out 98.8 in, 285/75R16 rollout 98.8 in",
        "285/75R16 rollout 2.52 m, 285/75R16 rollout 2520 mm",
        "285/75R16 revs 632 rev/mile, 285/75R16 revs 632 rev/mile",
        "285/75R16 revs 632/mile, 285/75R16 revs 632 rev/mile",
        "285/75R16 revs 632 / mile, ''",
        "285/75R16 revs 632 /mile, 285/75R16 revs 632 rev/mile",
        "285/75R16 revolutions 393/km, 285/75R16 revs 393 rev/km",
        "7.50-16 diameter 31.7 in, 7.50-16 diameter 31.7 in",
        "7.50-16 diameter 805 mm, 7.50-16 diameter 805 mm",
        "'285/75R16 diameter 32.8 in revs 632/mile rollout 2510 mm', 285/75R16 rollout 2510 mm revs 632 rev/mile diameter 32.8 in",
    })
    void readsWhatPeopleWrite(String typed, String canonical) {
        if (canonical.isEmpty()) {
            assertThat(RefusedSize.tire(typed).position()).hasValue(19);
            return;
        }
        Tire read = Tire.parse(typed);

        assertThat(read.text()).isEqualTo(canonical);
        assertThat(Tire.parse(canonical)).isEqualTo(read).hasSameHashCodeAs(read);
    }

    @Test
    void printsAnyLengthSoThatItReadsBackExactly() {
        Tire tire = Tire.parse("285/75R16")
                .withRollout(Length.ofMeters(2.5 + Math.PI / 1000.0))
                .withRevolutions(RevolutionsPerDistance.ofPerMeter(0.4 - 1.0 / 3000.0))
                .withDiameter(Length.ofMeters(5.0 / 6.0));

        assertThat(Tire.parse(tire.text())).isEqualTo(tire);
    }

    @Test
    void isNamedByItsSizeUntilRenamed() {
        Tire tire = Tire.parse("285/75r16 122/119q rollout 2510 mm");

        assertThat(tire.name()).isEqualTo("285/75R16 122/119Q");
        assertThat(tire.withName("at-285").name()).isEqualTo("at-285");
        assertThat(tire.withName("at-285").text()).isEqualTo(tire.text());
        assertThat(Tire.of(tire.designation()).rollout()).isEmpty();
    }

    @Test
    void computesMetricDiameterFromTheSize() {
        OverallDiameter diameter = overall("285/75R16");

        assertThat(diameter.basis()).isEqualTo(DiameterBasis.SIZE_FORMULA);
        assertThat(diameter.diameter().toMillimeters()).isEqualTo(833.9, within(1e-9));
        assertThat(diameter.assumptions()).isEmpty();
    }

    @Test
    void flagsTheHalfInchOfFlotationSizes() {
        OverallDiameter diameter = overall("37x12.50R17LT");

        assertThat(diameter.basis()).isEqualTo(DiameterBasis.NOMINAL_LESS_HALF_INCH);
        assertThat(diameter.diameter().toInches()).isEqualTo(36.5, within(1e-9));
        assertThat(diameter.assumptions()).singleElement().matches(Assumption::flagged);
    }

    @ParameterizedTest
    @CsvSource({
        "6.50R16, 742",
        "6.50R16C, 742",
        "6.50-16, 748",
        "7.50R16LT, 808",
        "205R16 104S, 736",
        "205R16C, 736",
        "33x12.50R15LT, 826",
        "33x12.50R15, 826",
    })
    void takesOtherSizesFromTheTableAndFlagsThem(String size, double millimeters) {
        OverallDiameter diameter = overall(size);

        assertThat(diameter.basis()).isEqualTo(DiameterBasis.SIZE_TABLE);
        assertThat(diameter.diameter().toMillimeters()).isEqualTo(millimeters, within(1e-9));
        assertThat(diameter.assumptions()).singleElement().satisfies(assumption -> {
            assertThat(assumption.flagged()).isTrue();
            assertThat(assumption.source().kind()).isEqualTo(SourceClass.FROM_MEMORY);
        });
    }

    @ParameterizedTest
    @CsvSource({"7.50-20", "7.50-16LT", "195R15", "205-16"})
    void asksForTheDiameterThatNeitherSizeNorTableTells(String size) {
        assertThat(Tire.parse(size).rolling().reason().orElseThrow())
                .contains(size)
                .contains("diameter, roll-out or revolutions");
        assertThat(Tire.parse(size)
                        .withDiameter(Length.ofMillimeters(790))
                        .rolling()
                        .value())
                .isPresent();
    }

    @Test
    void prefersTheDiameterGiven() {
        OverallDiameter diameter = overall("7.50-16 diameter 31.7 in");

        assertThat(diameter.basis()).isEqualTo(DiameterBasis.GIVEN);
        assertThat(diameter.diameter().toInches()).isEqualTo(31.7, within(1e-9));
        assertThat(diameter.assumptions()).isEmpty();
    }

    @Test
    void prefersMeasuredRolloutToEverything() {
        RollingCircumference rolling = rolling("285/75R16 rollout 2510 mm revs 632/mile diameter 32.8 in");

        assertThat(rolling.basis()).isEqualTo(RollingBasis.MEASURED_ROLLOUT);
        assertThat(rolling.circumference().toMillimeters()).isEqualTo(2510.0, within(1e-9));
        assertThat(rolling.radius().toMillimeters()).isEqualTo(2510.0 / (2.0 * Math.PI), within(1e-9));
        assertThat(rolling.assumptions()).isEmpty();
    }

    @Test
    void prefersMakersRevolutionsToTheRule() {
        RollingCircumference rolling = rolling("285/75R16 revs 632/mile diameter 32.8 in");

        assertThat(rolling.basis()).isEqualTo(RollingBasis.MAKER_REVOLUTIONS);
        assertThat(rolling.circumference().toInches()).isCloseTo(63360.0 / 632.0, withinPercentage(1e-10));
        assertThat(rolling.revolutions().toPerMile()).isCloseTo(632.0, withinPercentage(1e-10));
    }

    @Test
    void fallsBackToTheRuleForRadials() {
        RollingCircumference rolling = rolling("285/75R16");

        assertThat(rolling.basis()).isEqualTo(RollingBasis.RADIAL_RULE);
        assertThat(rolling.circumference().toMillimeters()).isCloseTo(3.05 * 833.9, withinPercentage(1e-10));
        assertThat(rolling.assumptions()).singleElement().matches(Assumption::flagged);
        assertThat(rolling.diameter()).contains(overall("285/75R16"));
    }

    @ParameterizedTest
    @CsvSource({"7.50-16, 2, bias-ply", "P195/75B14, 1, bias-belted"})
    void flagsTheEstimateForBiasPly(String size, int assumptions, String words) {
        RollingCircumference rolling = rolling(size);

        assertThat(rolling.basis()).isEqualTo(RollingBasis.BIAS_RULE);
        assertThat(rolling.circumference().ratioTo(overall(size).diameter()))
                .isCloseTo(3.05 * 96.0 / 98.0, withinPercentage(1e-10));
        assertThat(rolling.assumptions()).hasSize(assumptions).allMatch(Assumption::flagged);
        assertThat(rolling.assumptions().get(assumptions - 1).statement()).contains(words);
    }

    @Test
    void labelsEveryBasisForTheCustomer() {
        assertThat(RollingBasis.values()).extracting(RollingBasis::label).doesNotHaveDuplicates();
        assertThat(RollingBasis.RADIAL_RULE.label()).contains("3.05");
        assertThat(DiameterBasis.values()).extracting(DiameterBasis::label).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @CsvSource({
        "285/75Q16 rollout 2510 mm, 6, 285/75R16 rollout 2510 mm",
        "rollout 2510 mm, 0, ''",
        "285/75R16 rollout, 17, ''",
        "285/75R16 rollout 2510, 22, ''",
        "285/75R16 rollout 2510 kg, 23, ''",
        "285/75R16 rollout 99 mm, 18, ''",
        "285/75R16 rollout 7 m, 18, ''",
        "285/75R16 rollout 1800 mm, 18, ''",
        "285/75R16 rollout -2510 mm, 18, ''",
        "285/75R16 diameter 83 mm, 19, ''",
        "285/75R16 diameter 42 in, 19, ''",
        "285/75R16 revs 393 rev/mile, 15, ''",
        "285/75R16 revs 632 km, 19, ''",
        "285/75R16 revs 632/mle, 18, ''",
        "285/75R16 revs 5/mile, 15, ''",
        "285/75R16 rollout 2510 mm rollout 2520 mm, 26, ''",
        "285/75R16 revs 632/mile revs 632/mile, 24, ''",
        "285/75R16 diameter 33 in diameter 33 in, 25, ''",
    })
    void locatesFaultsInTheTextAsTyped(String typed, int position, String near) {
        Refusal refusal = RefusedSize.tire(typed);

        assertThat(refusal.given()).isEqualTo(typed);
        assertThat(refusal.position()).hasValue(position);
        assertThat(String.join("|", refusal.suggestions())).isEqualTo(near);
    }

    @Test
    void takesAMeasurementFarFromTheSizeForASlipOfTheUnit() {
        assertThat(RefusedSize.tire("285/75R16 rollout 1510 mm").problem())
                .contains("41 % less than the size tells")
                .contains("another unit");
        assertThat(RefusedSize.tire("285/75R16 revs 400/mile").problem()).contains("58 % more");
        assertThat(Tire.parse("285/75R16 rollout 2000 mm").rollout()).isPresent();
    }

    @Test
    void refusesAnEndlessTextWithoutReadingIt() {
        Refusal refusal = RefusedSize.tire("285/75R16 rollout ".repeat(100_000));

        assertThat(refusal.problem()).isEqualTo("is too long");
        assertThat(refusal.position().orElseThrow())
                .isBetween(0, refusal.given().length());
    }
}
