package drivetrain.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Power;
import drivetrain.quantity.Torque;
import drivetrain.quantity.Volume;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EngineTest {

    /** Invented figures. */
    private static final TorqueCurve CURVE = TorqueCurve.of(List.of(
            point(1000, 310),
            point(2500, 400),
            point(4100, 460),
            point(5000, 435),
            point(5700, 387),
            point(6600, 300)));

    private static final Engine ENGINE = Engine.of("v8-6.2", rpm(6600), CURVE);

    private static OperatingPoint point(double rpm, double poundFeet) {
        return OperatingPoint.of(rpm(rpm), Torque.ofPoundFeet(poundFeet));
    }

    private static AngularSpeed rpm(double rpm) {
        return AngularSpeed.ofRpm(rpm);
    }

    private static Engine engine(Rating rating, MeasuredAt measuredAt, Optional<Power> stated, TorqueSource torque) {
        return new Engine(
                "test engine",
                Aspiration.NATURAL,
                Ignition.SPARK,
                Optional.empty(),
                rating,
                measuredAt,
                Optional.empty(),
                rpm(6600),
                stated,
                torque);
    }

    @Test
    void answersFromItsCurve() {
        assertThat(ENGINE.torqueAt(rpm(4100)).orThrow().toPoundFeet()).isEqualTo(460.0);
        assertThat(ENGINE.peakTorque()).isEqualTo(CURVE.peakTorque());
        assertThat(ENGINE.peakPower()).isEqualTo(CURVE.peakPower());
        assertThat(ENGINE.band()).isEqualTo(CURVE.band());
    }

    @Test
    void holdsTheFirstTorqueDownToAStatedIdleAndFlagsIt() {
        Engine idling = ENGINE.withIdle(rpm(650));
        assertThat(idling.torqueAt(rpm(650)).orThrow().toPoundFeet()).isEqualTo(310.0);
        assertThat(idling.torqueAt(rpm(999)).orThrow().toPoundFeet()).isEqualTo(310.0);
        assertThat(idling.torqueAt(rpm(649)).reason().orElseThrow()).contains("starts at 1000 rpm");
        assertThat(idling.assumptionsAt(rpm(650)))
                .filteredOn(Assumption::flagged)
                .singleElement()
                .satisfies(held ->
                        assertThat(held.statement()).contains("1000 rpm").contains("650 rpm"));
        assertThat(idling.assumptionsAt(rpm(1000))).noneMatch(Assumption::flagged);
        assertThat(idling.assumptions()).anyMatch(Assumption::flagged);
        assertThat(idling.band().orElseThrow().lowest().toRpm()).isEqualTo(650.0);
        assertThat(idling.torqueWorking(rpm(700)).value()).isPresent();
    }

    @Test
    void doesNotHoldTorqueWithoutAStatedIdle() {
        assertThat(ENGINE.torqueAt(rpm(650)).value()).isEmpty();
        assertThat(ENGINE.torqueWorking(rpm(650)).value()).isEmpty();
        assertThat(ENGINE.assumptions()).noneMatch(Assumption::flagged);
    }

    @Test
    void idleAboveTheFirstPointChangesNothing() {
        Engine idling = ENGINE.withIdle(rpm(1100));
        assertThat(idling.torqueAt(rpm(1000)).orThrow().toPoundFeet()).isEqualTo(310.0);
        assertThat(idling.assumptions()).noneMatch(Assumption::flagged);
        assertThat(idling.band()).isEqualTo(CURVE.band());
    }

    @Test
    void doesNotHoldAnEstimateDownToIdle() {
        Engine estimated = Engine.parse("420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, idle 650 rpm, max 6600 rpm");
        assertThat(estimated.torqueAt(rpm(650)).reason().orElseThrow()).contains("the peaks say nothing");
        assertThat(estimated.band().orElseThrow().highest()).isEqualTo(rpm(6600));
        assertThat(estimated.assumptions()).anyMatch(Assumption::flagged);
    }

    @Test
    void answersNothingAboveTheMaximumSpeed() {
        assertThat(ENGINE.torqueAt(rpm(6601)).reason().orElseThrow()).contains("above the engine's maximum speed");
        assertThat(ENGINE.torqueWorking(rpm(6601)).reason().orElseThrow()).contains("maximum speed");
    }

    @Test
    void withoutATorqueCurveSaysSo() {
        Engine bare = Engine.of("bare", rpm(5000), new NoTorque());
        String reason = "the engine has no torque curve";
        assertThat(bare.torqueAt(rpm(3000)).reason()).contains(reason);
        assertThat(bare.peakTorque().reason()).contains(reason);
        assertThat(bare.peakPower().reason()).contains(reason);
        assertThat(bare.torqueWorking(rpm(3000)).reason()).contains(reason);
        assertThat(bare.peakTorqueWorking().reason()).contains(reason);
        assertThat(bare.peakPowerWorking().reason()).contains(reason);
        assertThat(bare.band()).isEmpty();
        assertThat(bare.findings()).isEmpty();
        assertThat(bare.text()).isEqualTo("max 5000 rpm");
    }

    @ParameterizedTest
    @CsvSource({
        "1.000, MET",
        "1.019, MET",
        "0.981, MET",
        "1.021, MARGINAL",
        "0.979, MARGINAL",
        "1.049, MARGINAL",
        "1.051, EXCEEDED",
        "0.940, EXCEEDED"
    })
    void checksTheStatedPowerAgainstTheCurve(double factor, Verdict verdict) {
        Power stated = CURVE.peakPower().orThrow().power().times(factor);
        List<Finding> findings =
                engine(Rating.NET, MeasuredAt.CRANK, Optional.of(stated), CURVE).findings();
        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(verdict);
            assertThat(finding.checked()).isEqualTo("stated power against torque curve");
            assertThat(finding.statement()).contains(factor < 1.0 ? "% below" : "% above");
            assertThat(finding.limit().orElseThrow().text(drivetrain.quantity.UnitSystem.US))
                    .isEqualTo("2.0 %");
        });
    }

    @Test
    void cannotCheckAStatedPowerWithoutACurve() {
        assertThat(engine(Rating.NET, MeasuredAt.CRANK, Optional.of(Power.ofHorsepower(400)), new NoTorque())
                        .findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.verdict()).isEqualTo(Verdict.NOT_EVALUATED));
    }

    @Test
    void saysWhenTheCurveEndsBelowTheMaximumSpeed() {
        assertThat(Engine.of("revs", rpm(7000), CURVE).findings())
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.NOT_EVALUATED);
                    assertThat(finding.statement()).contains("up to 6600 rpm only");
                });
        assertThat(ENGINE.findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "NET, CRANK, false, net figures at the crank",
        "GROSS, CRANK, true, gross",
        "NET, WHEELS, true, at the wheels",
        "GROSS, WHEELS, true, contradict"
    })
    void saysWhatWasMeasuredAndWhere(Rating rating, MeasuredAt measuredAt, boolean flagged, String part) {
        assertThat(engine(rating, measuredAt, Optional.empty(), CURVE).assumptions())
                .singleElement()
                .satisfies(assumption -> {
                    assertThat(assumption.flagged()).isEqualTo(flagged);
                    assertThat(assumption.statement()).contains(part);
                });
    }

    @Test
    void rejectsWhatCannotBe() {
        assertThatThrownBy(() -> Engine.of(" ", rpm(6600), CURVE))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("has no name");
        assertThatThrownBy(() -> ENGINE.withIdle(rpm(6600)))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("less than 6600 rpm");
        assertThatThrownBy(() -> Engine.of("slow", rpm(4000), CURVE))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("above the maximum speed")
                .hasMessageContaining("at most 4000 rpm");
        assertThatThrownBy(() -> Engine.of("still", rpm(0), new NoTorque())).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> engine(Rating.NET, MeasuredAt.CRANK, Optional.of(Power.ofHorsepower(0)), CURVE))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("stated power");
        assertThatThrownBy(() -> new Engine(
                        "vast",
                        Aspiration.NATURAL,
                        Ignition.SPARK,
                        Optional.of(Volume.ofLiters(900)),
                        Rating.NET,
                        MeasuredAt.CRANK,
                        Optional.empty(),
                        rpm(6600),
                        Optional.empty(),
                        CURVE))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("displacement");
    }

    @Test
    void aBandHasTwoEndsInOrder() {
        SpeedBand band = new SpeedBand(rpm(1000), rpm(2000));
        assertThat(band.contains(rpm(1000))).isTrue();
        assertThat(band.contains(rpm(2000))).isTrue();
        assertThat(band.contains(rpm(999))).isFalse();
        assertThat(band.contains(rpm(2001))).isFalse();
        assertThatThrownBy(() -> new SpeedBand(rpm(2000), rpm(2000))).isInstanceOf(RefusedException.class);
    }

    @Test
    void wordsAreThoseOfTheTrade() {
        assertThat(Aspiration.NATURAL.label()).isEqualTo("naturally aspirated");
        assertThat(Aspiration.TURBOCHARGED.word()).isEqualTo("turbocharged");
        assertThat(Ignition.COMPRESSION.word()).isEqualTo("compression");
        assertThat(MeasuredAt.WHEELS.word()).isEqualTo("wheels");
        assertThat(Rating.GROSS.word()).isEqualTo("gross");
    }

    @Test
    void namesTheLimitThatIsMissing() {
        assertThatThrownBy(() -> EngineLimit.of("no-such-limit"))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("engine/limits.csv");
    }
}
