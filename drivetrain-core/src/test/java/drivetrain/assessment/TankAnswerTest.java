package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Power;
import org.junit.jupiter.api.Test;

class TankAnswerTest {

    private static TankAnswer of(Specification order) {
        return TankAnswer.of(Builds.of(order)).orThrow();
    }

    @Test
    void lastsAsFarAsTheFuelForTheCruisePower() {
        TankAnswer answer = TankAnswer.of(Builds.tourer(), Outcome.of(Power.ofHorsepower(40.0)))
                .orThrow();
        TankAnswer.CruiseRange range = answer.range().orThrow();
        double hours = range.burnable().toLiters() / range.most().toLitersPerHour();
        assertThat(range.shortest().toMiles()).isCloseTo(70.0 * hours, within(1e-9));
        assertThat(range.longest()).isGreaterThan(range.shortest());
        assertThat(answer.assumptions()).anyMatch(one -> one.subject().contains("at a cruise"));
        Whole.assertWorkedOut(answer);
    }

    @Test
    void saysWhyItsRangeIsNotKnown() {
        TankAnswer answer = TankAnswer.of(Builds.tourer(), Outcome.notEvaluated("no drag is given"))
                .orThrow();
        assertThat(answer.range().reason()).contains("no drag is given");
    }

    @Test
    void makesVaporOnADay() {
        TankAnswer answer = of(Builds.TOURER);
        assertThat(answer.vapor().orThrow().toGrams()).isBetween(20.0, 35.0);
        assertThat(answer.findings())
                .extracting(Finding::checked)
                .containsExactly("vapor of a day against the canister");
        assertThat(answer.expansion().orThrow().toLiters()).isBetween(1.0, 2.5);
        assertThat(answer.warmingPerHour().orThrow()).isBetween(5.0, 30.0);
    }

    @Test
    void saysWhatToTypeForWhatItDoesNotKnow() {
        TankAnswer bare = of(Builds.TOURER.with(Slot.TANK, "90 L"));
        assertThat(bare.vapor().reason().orElseThrow()).contains("such as day 20 degC to 34 degC");
        assertThat(bare.expansion().value()).isEmpty();
        assertThat(bare.findings()).isEmpty();
        TankAnswer full = of(Builds.TOURER.with(Slot.TANK, "90 L, day 20 degC to 34 degC"));
        assertThat(full.vapor().reason().orElseThrow()).contains("such as fill 40 %");
        TankAnswer nowhere = of(Builds.TOURER.without(Slot.FUEL_SYSTEM));
        assertThat(nowhere.vapor().reason().orElseThrow()).contains("elevation 600 m");
        assertThat(of(Builds.TOURER.without(Slot.FUEL_SYSTEM).drivenIn("altitude 600 m"))
                        .vapor())
                .isEqualTo(of(Builds.TOURER).vapor());
        assertThat(nowhere.warmingPerHour().value()).isEmpty();
        assertThat(TankAnswer.of(Builds.of(Builds.TOURER.without(Slot.TANK)))
                        .reason()
                        .orElseThrow())
                .contains("such as tank 90 L");
    }
}
