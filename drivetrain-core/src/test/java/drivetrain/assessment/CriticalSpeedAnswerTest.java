package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.ShaftSpeed;
import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import org.junit.jupiter.api.Test;

class CriticalSpeedAnswerTest {

    private static final String SHAFT =
            "tube 76.2 mm x 2.1 mm of steel, length 1290 mm, yokes 1.3 kg 60 mm long in phase";
    private static final String LINE = "output 4 deg down, shaft 1290 mm 9 deg down, pinion 5 deg down";

    private static Specification with(String shaft) {
        return Builds.CRAWLER
                .without(Slot.FRONT_SHAFT)
                .without(Slot.REAR_LINE)
                .without(Slot.FRONT_LINE)
                .with(Slot.REAR_SHAFT, shaft);
    }

    private static CriticalSpeedAnswer answer(Specification order) {
        return CriticalSpeedAnswer.of(Builds.of(order)).orThrow();
    }

    private static Finding finding(CriticalSpeedAnswer answer, String words) {
        return answer.findings().stream()
                .filter(each -> each.checked().contains(words))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void holdsTheShaftAgainstTheFastestThatGearingAndTireAllow() {
        CriticalSpeedAnswer answer = answer(with(SHAFT));
        CriticalSpeedAnswer.Shaft rear = answer.shafts().get(0);

        assertThat(rear.place()).isEqualTo(ShaftPlace.REAR);
        assertThat(rear.speeds())
                .extracting(ShaftSpeed::where)
                .containsExactly(
                        "engine at its maximum in 1st high",
                        "engine at its maximum in 2nd high",
                        "engine at its maximum in 3rd high",
                        "engine at its maximum in 4th high",
                        "engine at its maximum in 5th high",
                        "tire at its speed symbol Q",
                        "cruise");
        assertThat(rear.speeds().get(4).speed().toRpm()).isCloseTo(6000 / 0.75, within(1e-9));
        assertThat(rear.fraction(rear.speeds().get(3)))
                .isCloseTo(6000 / rear.critical().speed().toRpm(), within(1e-9));
        assertThat(finding(answer, "rear shaft speed").checked()).contains("tire at its speed symbol Q");
        assertThat(answer.cautions()).isNotEmpty();
        assertThat(answer.assumptions()).extracting(Assumption::subject).contains("yokes", "shaft ends");
        assertThat(answer.working().steps()).hasSizeGreaterThan(10);
    }

    @Test
    void aLongShaftWhirlsBelowTheTiresSpeed() {
        String longer = SHAFT.replace("1290 mm", "2400 mm");

        assertThat(finding(answer(with(longer)), "rear shaft speed").verdict()).isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void needsTheAnglesWhereCruiseIsNearHalfTheCriticalSpeed() {
        Specification slow = with(SHAFT).cruisingAt("88 mph");
        double half = answer(slow).shafts().get(0).critical().speed().toRpm() / 2;
        double perMile = answer(slow).shafts().get(0).speeds().get(6).speed().toRpm() / 88;
        Specification near = with(SHAFT).cruisingAt(half / perMile + " mph");

        assertThat(finding(answer(near), "half critical").verdict()).isEqualTo(Verdict.NOT_EVALUATED);
        assertThat(finding(answer(near.with(Slot.REAR_LINE, LINE)), "half critical")
                        .verdict())
                .isEqualTo(Verdict.MARGINAL);
        assertThat(finding(answer(near.with(Slot.REAR_LINE, LINE.replace("9 deg", "5 deg"))), "half critical")
                        .verdict())
                .isEqualTo(Verdict.MET);
    }

    @Test
    void looksAtTheBounceOfTwoPieces() {
        String two = "tube 76.2 mm x 2.1 mm of steel, length 700 mm, yokes 1.3 kg 60 mm long in phase, "
                + "tube 76.2 mm x 2.1 mm of steel, length 900 mm, yokes 1.3 kg 60 mm long in phase";

        CriticalSpeedAnswer answer = answer(with(two + ", bearing 300 N/mm"));
        assertThat(finding(answer, "bounce").verdict()).isIn(Verdict.MET, Verdict.MARGINAL);
        assertThat(CriticalSpeedAnswer.of(Builds.of(with(two))).reason().orElseThrow())
                .contains("bearing 300 N/mm");
    }

    @Test
    void saysWhatIsMissing() {
        Combination nothing = Builds.of(Specification.empty());
        Combination noLength = Builds.of(with("tube 76.2 mm x 2.1 mm of steel"));
        Combination alone = Builds.of(Specification.empty().with(Slot.REAR_SHAFT, SHAFT));

        assertThat(CriticalSpeedAnswer.of(nothing).reason()).contains("no driveshaft is chosen");
        assertThat(CriticalSpeedAnswer.of(noLength).reason().orElseThrow())
                .contains("length of the rear shaft is not known");
        CriticalSpeedAnswer bare = CriticalSpeedAnswer.of(alone).orThrow();
        assertThat(bare.shafts().get(0).speeds()).isEmpty();
        assertThat(bare.findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.verdict()).isEqualTo(Verdict.NOT_EVALUATED));
    }
}
