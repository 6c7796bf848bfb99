package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.quantity.Length;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AxleMatchTest {

    private static final Length TIRE = Length.ofMillimeters(2500.0);

    @Test
    void flagsFourTenAgainstFourEleven() {
        Finding finding = AxleMatch.of(Ratio.ofTeeth(37, 9), TIRE, Ratio.ofTeeth(41, 10), TIRE, AxleTie.PART_TIME);
        assertThat(finding.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(finding.value().orElseThrow().text(UnitSystem.US)).isEqualTo("0.27 %");
        assertThat(finding.statement())
                .startsWith("the front driveshaft wants to turn 0.27 % faster: 4.44 turns per km")
                .contains("wind up");
    }

    @Test
    void windsUpByTheDifferenceOfTheShaftTurns() {
        double turns = AxleMatch.windUpPerKilometer(Ratio.ofTeeth(37, 9), TIRE, Ratio.ofTeeth(41, 10), TIRE);
        assertThat(turns).isCloseTo(400.0 * (37.0 / 9.0 - 4.1), within(1e-9));
    }

    @Test
    void agreesWithEqualAxlesAndTires() {
        Finding finding = AxleMatch.of(Ratio.of(4.1), TIRE, Ratio.ofTeeth(41, 10), TIRE, AxleTie.LOCKED);
        assertThat(finding.verdict()).isEqualTo(Verdict.MET);
        assertThat(finding.statement()).isEqualTo("the axles agree");
    }

    @Test
    void takesADecimalForItsOwnPair() {
        assertThat(AxleMatch.of(Ratio.of(3.73), TIRE, Ratio.ofTeeth(41, 11), TIRE, AxleTie.LOCKED)
                        .verdict())
                .isEqualTo(Verdict.MET);
    }

    @ParameterizedTest
    @CsvSource({
        "2500, LOCKED, MET",
        "2497, LOCKED, MET",
        "2490, LOCKED, MARGINAL",
        "2470, LOCKED, EXCEEDED",
        "2530, PART_TIME, EXCEEDED",
        "2470, OPEN, MARGINAL",
        "2490, OPEN, MARGINAL",
        "2500, OPEN, MET",
        "2000, REAR_ONLY, MET"
    })
    void comparesTiresToo(double frontMillimeters, AxleTie tie, Verdict verdict) {
        Ratio axle = Ratio.ofTeeth(41, 10);
        assertThat(AxleMatch.of(axle, Length.ofMillimeters(frontMillimeters), axle, TIRE, tie)
                        .verdict())
                .isEqualTo(verdict);
    }

    @Test
    void namesTheShaftThatWantsToTurnFaster() {
        Ratio axle = Ratio.ofTeeth(41, 10);
        Length larger = Length.ofMillimeters(2550.0);
        assertThat(AxleMatch.mismatch(axle, larger, axle, TIRE)).isCloseTo(2500.0 / 2550.0 - 1.0, within(1e-12));
        assertThat(AxleMatch.of(axle, larger, axle, TIRE, AxleTie.OPEN).statement())
                .startsWith("the rear driveshaft")
                .endsWith("the open center differential turns all the time");
    }

    @Test
    void explainsItself() {
        Working working = AxleMatch.working(Ratio.ofTeeth(37, 9), TIRE, Ratio.ofTeeth(41, 10), TIRE);
        assertThat(working.steps())
                .extracting(step -> step.result().text(UnitSystem.METRIC))
                .containsExactly("0.271 %", "4.44", "1.084");
    }

    @Test
    void refusesImpossibleCircumferences() {
        Ratio axle = Ratio.ofTeeth(41, 10);
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> AxleMatch.of(axle, Length.ofMeters(0.0), axle, TIRE, AxleTie.OPEN));
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> AxleMatch.of(axle, TIRE, axle, Length.ofMeters(9.0), AxleTie.OPEN));
    }
}
