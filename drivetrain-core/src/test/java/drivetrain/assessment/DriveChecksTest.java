package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class DriveChecksTest {

    private static Finding top(Combination build) {
        return DriveChecks.topSpeed(build, RoadSpeedsAnswer.atMaximum(build));
    }

    @Test
    void findsEqualAxlesEqual() {
        assertThat(DriveChecks.axleMatch(Builds.crawler()).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void findsAxlesThatFightEachOther() {
        assertThat(DriveChecks.axleMatch(Builds.of(Builds.CRAWLER.with(Slot.FRONT_AXLE, "41/10")))
                        .verdict())
                .isEqualTo(Verdict.EXCEEDED);
        assertThat(DriveChecks.axleMatch(
                                Builds.of(Builds.CRAWLER.with(Slot.FRONT_TIRE, "33x12.50R15LT 108Q rollout 2515 mm")))
                        .verdict())
                .isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void saysWhyTheAxlesWereNotCompared() {
        assertThat(List.of(
                        DriveChecks.axleMatch(Builds.of(Builds.CRAWLER.without(Slot.FRONT_AXLE))),
                        DriveChecks.axleMatch(Builds.of(Builds.CRAWLER.without(Slot.TIRE))),
                        DriveChecks.axleMatch(Builds.of(Builds.CRAWLER.without(Slot.TRANSFER))),
                        DriveChecks.axleMatch(Builds.of(Builds.CRAWLER.with(Slot.TRANSFER, "1.00 4.00 rear-only")))))
                .allSatisfy(finding -> assertThat(finding.verdict()).isEqualTo(Verdict.NOT_EVALUATED))
                .extracting(Finding::statement)
                .containsExactly(
                        "no front axle is chosen",
                        "no tire is chosen",
                        "no transfer case is chosen",
                        "only the rear axle is driven");
    }

    @Test
    void findsTheTireSlowerThanTheGearingMarginal() {
        assertThat(top(Builds.crawler()).verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(top(Builds.crawler()).statement()).contains("the driver must keep below the tire's limit");
    }

    @Test
    void findsTheTireFastEnough() {
        assertThat(top(Builds.of(Builds.CRAWLER.with(Slot.TRANSMISSION, "5.61 3.04 2.00")))
                        .verdict())
                .isEqualTo(Verdict.MET);
    }

    @Test
    void saysWhyTheTireWasNotChecked() {
        assertThat(top(Builds.of(Builds.CRAWLER.without(Slot.ENGINE))).statement())
                .isEqualTo("no engine is chosen");
        assertThat(top(Builds.of(Builds.CRAWLER.with(Slot.TIRE, "285/75R16"))).verdict())
                .isEqualTo(Verdict.NOT_EVALUATED);
    }
}
