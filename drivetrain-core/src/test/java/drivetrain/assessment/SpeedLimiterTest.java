package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Speed;
import drivetrain.refusal.RefusedException;
import drivetrain.road.Grade;
import drivetrain.road.TopSpeed;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A speed limiter against everything that asks how fast the vehicle gets. */
class SpeedLimiterTest {

    private static Combination limited(Specification order, String speed) {
        return Builds.of(order.limitedTo(speed));
    }

    private static Finding finding(List<Finding> findings, String checked) {
        return findings.stream()
                .filter(finding -> finding.checked().startsWith(checked))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing is checked as " + checked + " among " + findings));
    }

    @Test
    void holdsTheTopSpeedInEveryGearThatReachesIt() {
        TopAnswer top = TopAnswer.of(limited(Builds.TOURER, "100 mph")).orThrow();

        assertThat(top.fastest().top().orThrow().speed()).isEqualTo(Speed.ofMilesPerHour(100.0));
        assertThat(top.fastest().top().orThrow().limit()).isEqualTo(TopSpeed.Limit.LIMITER);
        assertThat(top.fastest().gear().label()).isEqualTo("6th high");
        assertThat(top.rows().get(0).top().orThrow().limit()).isEqualTo(TopSpeed.Limit.GEARING);
        assertThat(top.assumptions()).extracting(Assumption::subject).contains("speed limiter");
        Whole.assertWorkedOut(top);
    }

    /** Symbol R is 170 km/h (ISO 4000-1; the table tire/speed-symbol.csv names its copies). */
    @ParameterizedTest
    @CsvSource({"160 km/h, MET", "169 km/h, MARGINAL", "180 km/h, EXCEEDED"})
    void savesATireThatIsSlowerThanTheVehicle(String speed, Verdict verdict) {
        TopAnswer free = TopAnswer.of(Builds.of(Builds.TOURER)).orThrow();
        TopAnswer held = TopAnswer.of(limited(Builds.TOURER, speed)).orThrow();

        assertThat(finding(free.findings(), "reachable top").verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(finding(held.findings(), "reachable top").verdict()).isEqualTo(verdict);
        List<Finding> all = Assessment.of(limited(Builds.TOURER, speed)).findings();
        assertThat(finding(all, "speed limiter tire speed").verdict())
                .isEqualTo(verdict == Verdict.EXCEEDED ? Verdict.MARGINAL : verdict);
        assertThat(all).extracting(Finding::checked).doesNotContain("gearing limit tire speed");
    }

    @Test
    void leavesTheGearingToTheTireWhereItEndsFirst() {
        List<Finding> all = Assessment.of(limited(Builds.TOURER, "499 km/h")).findings();

        assertThat(all).extracting(Finding::checked).contains("gearing limit tire speed");
    }

    @Test
    void keepsTheShaftsFromWhatThePowerWouldGiveThem() {
        List<Finding> all = Assessment.of(limited(Builds.TOURER, "100 mph")).findings();

        assertThat(finding(all, "rear shaft speed, speed limiter in 6th high").verdict())
                .isEqualTo(Verdict.MET);
        assertThat(all).extracting(Finding::checked).noneMatch(checked -> checked.contains("power and gearing"));
    }

    @Test
    void limitsTheShaftsWhereTheRoadLoadIsNotKnown() {
        Combination noDrag = limited(Builds.TOURER.with(Slot.VEHICLE, "mass 2200 kg"), "80 mph");

        assertThat(Assessment.of(noDrag).findings())
                .extracting(Finding::checked)
                .contains("rear shaft speed, speed limiter");
    }

    @ParameterizedTest
    @CsvSource({"65 mph, MET", "60 mph, EXCEEDED"})
    void isHeldAgainstTheCruiseSpeed(String speed, Verdict verdict) {
        Combination order = limited(Builds.TOURER.cruisingAt("65 mph"), speed);

        assertThat(finding(Assessment.of(order).findings(), "cruise below the speed limiter")
                        .verdict())
                .isEqualTo(verdict);
        assertThat(Assessment.of(Builds.of(Builds.TOURER)).findings())
                .extracting(Finding::checked)
                .doesNotContain("cruise below the speed limiter");
    }

    @Test
    void endsRunsAndPullsAboveIt() {
        Combination order = limited(Builds.TOURER, "50 mph");

        assertThat(SprintAnswer.to(order, Speed.ofMilesPerHour(60.0)).reason().orElseThrow())
                .contains("holds the vehicle at 50.0 mph (80 km/h)");
        assertThat(SprintAnswer.to(order, Speed.ofMilesPerHour(50.0))
                        .orThrow()
                        .quarterMile()
                        .reason())
                .isPresent();
        assertThat(PullAnswer.at(order, Grade.level(), Speed.ofMilesPerHour(50.1))
                        .reason())
                .isPresent();
        assertThat(PullAnswer.at(order, Grade.level(), Speed.ofMilesPerHour(50.0))
                        .value())
                .isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"9 km/h", "501 km/h", "-1 mph", "0 mph", "105", "fast"})
    void isRefusedWhereItIsNone(String speed) {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> limited(Builds.TOURER, speed))
                .satisfies(refused -> assertThat(refused.refusal().subject()).contains("speed"));
    }
}
