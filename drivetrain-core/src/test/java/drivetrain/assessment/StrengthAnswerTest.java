package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.HouseLimits;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class StrengthAnswerTest {

    private static final String TUBE = "tube 76.2 mm x 2.1 mm of steel-4130, length 1290 mm";

    private static Specification with(String shaft) {
        return Builds.CRAWLER.without(Slot.FRONT_SHAFT).with(Slot.REAR_SHAFT, shaft);
    }

    private static StrengthAnswer answer(Specification order) {
        return StrengthAnswer.of(Builds.of(order)).orThrow();
    }

    @Test
    void loadsTheTubeWithTheTorqueOfTheShaft() {
        StrengthAnswer answer = answer(with(TUBE + ", joints rated 99000 N\u00B7m"));
        StrengthAnswer.Shaft rear = answer.shafts().get(0);
        StrengthAnswer.Piece piece = rear.pieces().get(0);

        assertThat(piece.torsion().torque()).isEqualTo(rear.torque());
        assertThat(piece.torsion().factor().orElseThrow() * rear.torque().toNewtonMeters())
                .isCloseTo(piece.torsion().yieldTorque().orElseThrow().toNewtonMeters(), withinPercentage(1e-9));
        assertThat(piece.length()).isPresent();
        assertThat(answer.findings())
                .extracting(Finding::checked)
                .anyMatch(checked -> checked.startsWith("rear shaft joints"));
        assertThat(answer.assumptions()).extracting(Assumption::subject).contains("shaft material steel-4130");
        assertThat(answer.cautions()).isNotEmpty();
        assertThat(answer.working().steps()).hasSizeGreaterThan(4);
    }

    @Test
    void keepsARatingThatEvenTheEngineCannotReach() {
        StrengthAnswer answer = answer(with(TUBE + ", joints rated 99000 N\u00B7m, flanges rated 99000 N\u00B7m"));

        assertThat(answer.findings())
                .filteredOn(finding -> finding.checked().contains("joints")
                        || finding.checked().contains("flanges"))
                .hasSize(2)
                .allSatisfy(finding -> assertThat(finding.verdict()).isEqualTo(Verdict.MET));
    }

    /** Without a vehicle nobody knows where the tires slip; a reserve that the shop wants is then no rating that is passed. */
    @Test
    void tellsAReserveFromARatingWhereTireSlipIsNotKnown() {
        HouseLimits careful = HouseLimits.packed().with("torqueRatingReserveLeast", 0.9, "the shop");
        Catalog shelf = Catalog.titled("own").limits(careful).build();
        Specification rated = with("tube 76.2 mm x 2.1 mm of steel, joints rated 99000 N\u00B7m")
                .without(Slot.VEHICLE);
        Specification weak =
                with("tube 76.2 mm x 2.1 mm of steel, joints rated 99 N\u00B7m").without(Slot.VEHICLE);

        Finding spared = last(StrengthAnswer.of(Combination.resolve(rated, shelf)));
        assertThat(spared.verdict()).isEqualTo(Verdict.NOT_EVALUATED);
        assertThat(spared.statement()).contains("which leaves less to spare than is wanted, but at which torque");
        assertThat(spared.rule()).isEqualTo(Source.given("the shop"));
        assertThat(last(StrengthAnswer.of(Combination.resolve(weak, shelf))).statement())
                .contains("more than the shaft is rated for, but at which torque");
    }

    private static Finding last(Outcome<StrengthAnswer> answer) {
        List<Finding> findings = answer.orThrow().findings();
        return findings.get(findings.size() - 1);
    }

    @Test
    void saysWhatIsMissing() {
        Combination nothing = Builds.of(Specification.empty());
        Combination noEngine = Builds.of(with(TUBE).without(Slot.ENGINE));
        Combination frontless = Builds.of(with(TUBE)
                .without(Slot.REAR_SHAFT)
                .with(Slot.FRONT_SHAFT, TUBE)
                .with(Slot.TRANSFER, "1.00 2.72 rear-only"));

        assertThat(StrengthAnswer.of(nothing).reason()).contains("no driveshaft is chosen");
        assertThat(StrengthAnswer.of(noEngine).value()).isPresent();
        assertThat(StrengthAnswer.of(frontless).reason()).isPresent();
    }

    @Test
    void leavesTheTwistOutWhereTheLengthIsNotKnown() {
        StrengthAnswer answer = answer(with("tube 76.2 mm x 2.1 mm of steel").without(Slot.REAR_LINE));

        assertThat(answer.shafts().get(0).pieces().get(0).length()).isEmpty();
        assertThat(answer.findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.verdict()).isEqualTo(Verdict.NOT_EVALUATED));
        assertThat(answer.working().steps())
                .noneSatisfy(step -> assertThat(step.name()).isEqualTo("twist"));
    }
}
