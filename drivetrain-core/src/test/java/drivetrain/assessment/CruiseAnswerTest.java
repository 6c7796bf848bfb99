package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.HouseLimits;
import drivetrain.combination.Slot;
import drivetrain.finding.Verdict;
import drivetrain.gearing.Range;
import drivetrain.quantity.Speed;
import drivetrain.refusal.RefusedException;
import drivetrain.tire.TireCautions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CruiseAnswerTest {

    private static final Speed ROAD = Speed.ofMilesPerHour(60.0);

    private static CruiseAnswer at(Combination build, Speed speed, GearChoice choice) {
        return CruiseAnswer.at(build, speed, choice).orThrow();
    }

    @Test
    void turnsTheEngineByRollingRadiusAndTotalRatio() {
        CruiseAnswer answer = at(Builds.crawler(), ROAD, GearChoice.of(4, Range.HIGH));

        assertThat(answer.engineSpeed().toRpm())
                .isCloseTo(ROAD.toMetersPerSecond() * 60.0 / 2.673 * 41.0 / 9.0, within(1e-9));
        assertThat(answer.driveshaftSpeed().toRpm())
                .isCloseTo(answer.engineSpeed().toRpm(), within(1e-9));
    }

    @Test
    void listsEveryForwardGearOfTheRange() {
        CruiseAnswer high = at(Builds.crawler(), ROAD, GearChoice.TOP);
        CruiseAnswer low = at(Builds.crawler(), ROAD, GearChoice.topOf(Range.LOW));

        assertThat(high.everyGear()).extracting(row -> row.gear().number()).containsExactly(1, 2, 3, 4, 5);
        assertThat(high.everyGear())
                .allSatisfy(row -> assertThat(row.gear().range()).isEqualTo(Range.HIGH));
        assertThat(low.everyGear())
                .allSatisfy(row -> assertThat(row.gear().range()).isEqualTo(Range.LOW));
        assertThat(high.everyGear().get(4).engineSpeed()).isEqualTo(high.engineSpeed());
    }

    @Test
    void listsTheGearsAsTheAuxiliaryUnitStands() {
        Combination build = Builds.of(Builds.CRAWLER.with(Slot.OVERDRIVE, "0.78"));

        assertThat(at(build, ROAD, GearChoice.TOP).everyGear())
                .hasSize(5)
                .allSatisfy(row -> assertThat(row.gear().auxiliaryEngaged()).isTrue());
        assertThat(at(build, ROAD, GearChoice.of(4, Range.HIGH)).everyGear())
                .hasSize(5)
                .allSatisfy(row -> assertThat(row.gear().auxiliaryEngaged()).isFalse());
    }

    @Test
    void addsTheSlipOfAnOpenConverterAndNoneOfAClutch() {
        CruiseAnswer open = at(Builds.tourer(), ROAD, GearChoice.TOP);

        assertThat(open.unlocked().orElseThrow().isGreaterThan(open.engineSpeed()))
                .isTrue();
        assertThat(open.working().steps())
                .anySatisfy(step -> assertThat(step.name()).contains("converter slipping"));
        assertThat(at(Builds.crawler(), ROAD, GearChoice.TOP).unlocked()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"15, EXCEEDED", "25, MARGINAL", "55, MET"})
    void findsOutWhetherTheEngineLugs(double mph, Verdict verdict) {
        CruiseAnswer answer = at(Builds.crawler(), Speed.ofMilesPerHour(mph), GearChoice.TOP);

        assertThat(answer.findings().get(0).verdict()).isEqualTo(verdict);
        assertThat(answer.findings().get(0).checked()).contains("low side");
    }

    @ParameterizedTest
    @CsvSource({"55, MET", "100, MARGINAL", "180, EXCEEDED"})
    void findsOutWhetherTheEngineScreams(double mph, Verdict verdict) {
        CruiseAnswer answer = at(Builds.crawler(), Speed.ofMilesPerHour(mph), GearChoice.TOP);

        assertThat(answer.findings().get(1).verdict()).isEqualTo(verdict);
        assertThat(answer.findings().get(1).checked()).contains("high side");
    }

    @Test
    void findsOutWhetherTheTireMayGoThatFast() {
        CruiseAnswer answer = at(Builds.crawler(), Speed.ofKilometersPerHour(161.0), GearChoice.TOP);

        assertThat(answer.findings()).hasSize(3);
        assertThat(answer.findings().get(2).verdict()).isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void needsNoEngineForTheEngineSpeedButForItsLimits() {
        CruiseAnswer answer = at(Builds.of(Builds.CRAWLER.without(Slot.ENGINE)), ROAD, GearChoice.TOP);

        assertThat(answer.findings().subList(0, 2))
                .allSatisfy(finding -> assertThat(finding.statement()).isEqualTo("no engine is chosen"))
                .allSatisfy(finding -> assertThat(finding.verdict()).isEqualTo(Verdict.NOT_EVALUATED));
    }

    @Test
    void evaluatesNoLowSideWithoutAnIdleSpeed() {
        Combination build =
                Builds.of(Builds.CRAWLER.with(Slot.ENGINE, "350 hp at 5600 rpm, 370 lb-ft at 4200 rpm, max 6000 rpm"));

        assertThat(at(build, ROAD, GearChoice.TOP).findings().get(0).statement())
                .isEqualTo("the engine's idle speed is not given");
    }

    @Test
    void heedsTheLimitsOfTheShop() {
        HouseLimits strict = HouseLimits.packed().with(HouseLimits.CRUISE_MOST_OF_MAXIMUM, 0.1, "the shop");
        Combination build = Combination.resolve(
                Builds.CRAWLER, Catalog.titled("strict").limits(strict).build());

        assertThat(at(build, ROAD, GearChoice.TOP).findings().get(1)).satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.MARGINAL);
            assertThat(finding.rule().citation()).isEqualTo("the shop");
        });
    }

    @Test
    void saysThatADecimalAxleRatioStandsForATeethPair() {
        Combination decimal = Builds.of(Builds.TOURER.with(Slot.REAR_AXLE, "3.73"));
        String pair = "41/11";

        assertThat(at(decimal, ROAD, GearChoice.TOP).assumptions())
                .anySatisfy(assumption -> assertThat(assumption.statement()).contains(pair));
        assertThat(RoadSpeedsAnswer.atMaximum(decimal).orThrow().assumptions())
                .anySatisfy(assumption -> assertThat(assumption.statement()).contains(pair));
        assertThat(CrawlAnswer.of(decimal).orThrow().assumptions())
                .anySatisfy(assumption -> assertThat(assumption.statement()).contains(pair));
    }

    @Test
    void worksEachFigureOutOnce() {
        CruiseAnswer answer = at(Builds.tourer(), ROAD, GearChoice.TOP);

        assertThat(answer.working().steps()).doesNotHaveDuplicates();
        assertThat(answer.working().inputs())
                .extracting(input -> input.name())
                .doesNotHaveDuplicates()
                .doesNotContain("rolling radius", "engine speed");
    }

    @Test
    void saysWhatItRestsOn() {
        CruiseAnswer answer = at(Builds.tourer(), ROAD, GearChoice.TOP);

        assertThat(answer.assumptions()).containsAll(answer.rolling().assumptions());
        assertThat(answer.assumptions()).containsAll(answer.coupling().speedAssumptions());
        assertThat(answer.cautions()).isEqualTo(TireCautions.all());
        Whole.assertWorkedOut(answer);
    }

    @Test
    void saysWhatIsMissing() {
        assertThat(CruiseAnswer.at(Builds.of(Builds.CRAWLER.without(Slot.TIRE)), ROAD, GearChoice.TOP)
                        .reason())
                .contains("no tire is chosen");
        assertThat(CruiseAnswer.at(Builds.of(Builds.CRAWLER.without(Slot.TRANSFER)), ROAD, GearChoice.TOP)
                        .reason())
                .contains("no transfer case is chosen");
        assertThat(CruiseAnswer.at(Builds.crawler(), ROAD, GearChoice.of(9, Range.HIGH))
                        .reason())
                .contains("the transmission has 5 forward gears");
    }

    @Test
    void refusesARoadSpeedOfZero() {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> CruiseAnswer.at(Builds.crawler(), Speed.ofMilesPerHour(0.0), GearChoice.TOP))
                .withMessageContaining("road speed");
    }
}
