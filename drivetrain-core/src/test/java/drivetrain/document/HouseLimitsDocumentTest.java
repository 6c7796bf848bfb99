package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.assessment.Assessment;
import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** From a catalog's file to the verdict of a check. */
class HouseLimitsDocumentTest {

    private static final Specification ORDER = Specification.empty()
            .with(Slot.REAR_AXLE, "41/11")
            .with(Slot.TIRE, "LT265/75R16 123/120R rollout 2457 mm")
            .with(
                    Slot.REAR_SHAFT,
                    "tube 3 in x 0.083 in of steel-1020-drawn, yokes in phase, joints rated 1700 N\u00B7m to 25 deg")
            .with(Slot.REAR_LINE, "output 3 deg down, shaft 1300 mm 5.6 deg down, pinion 2.3 deg down");

    private static Finding check(Catalog catalog, String checked) {
        return Assessment.of(Combination.resolve(ORDER, catalog)).findings().stream()
                .filter(finding -> finding.checked().startsWith(checked))
                .findFirst()
                .orElseThrow();
    }

    private static Catalog catalog(String limits) {
        return CatalogDocument.parse("shelf.yaml", Samples.catalogOf(limits), DocumentFormat.YAML);
    }

    @Test
    void aLimitOfTheCatalogChangesAVerdictAndItsSource() {
        Catalog strict = catalog("houseLimits: {criticalSpeedShareGood: 0.55}\n");
        Finding packed = check(Catalog.empty(), "rear shaft speed");
        Finding own = check(strict, "rear shaft speed");

        assertThat(packed.verdict()).isEqualTo(Verdict.MET);
        assertThat(packed.rule().citation()).startsWith("a propshaft maker's technical page");
        assertThat(own.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(own.rule()).isEqualTo(Source.given("Test shelf"));
    }

    @Test
    void aLimitThatTheCatalogLeavesAloneKeepsItsSource() {
        Catalog strict = catalog("houseLimits: {criticalSpeedShareGood: 0.55}\n");
        String checked = "rear shaft, difference of its joint angles";

        assertThat(check(strict, checked)).isEqualTo(check(Catalog.empty(), checked));
    }

    @Test
    void theCatalogOfTheGuideHoldsWhatItSays() throws IOException {
        Catalog guide = CatalogDocument.read(Path.of("..", "docs", "guide", "house-limits.yaml"));

        assertThat(guide.limits().own())
                .containsOnlyKeys(
                        "criticalSpeedShareGood", "criticalSpeedShareMost", "jointAngleDifferenceMostDegrees");
        assertThat(check(guide, "rear shaft, difference of its joint angles").rule())
                .isEqualTo(Source.given("House rules"));
    }
}
