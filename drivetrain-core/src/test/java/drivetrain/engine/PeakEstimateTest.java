package drivetrain.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Power;
import drivetrain.quantity.Torque;
import drivetrain.refusal.RefusedException;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PeakEstimateTest {

    private static AngularSpeed rpm(double rpm) {
        return AngularSpeed.ofRpm(rpm);
    }

    private static PeakEstimate of(double kilowatts, double powerRpm, double newtonMeters, double torqueRpm) {
        return PeakEstimate.of(
                Power.ofKilowatts(kilowatts), rpm(powerRpm), Torque.ofNewtonMeters(newtonMeters), rpm(torqueRpm));
    }

    /** Invented peaks: a peaky engine, a flat one, one with held torque, one with held power. */
    @ParameterizedTest
    @CsvSource({
        "313, 5700, 624, 4100",
        "180, 4000, 580, 1500",
        "200, 4800, 400, 1600",
        "110, 3600, 500, 1400",
        "85, 3600, 500, 1600"
    })
    void passesThroughBothPeaksAndNeverExceedsThem(double kw, double n2, double nm, double n1) {
        PeakEstimate estimate = of(kw, n2, nm, n1);
        assertPeaksHold(estimate, kw * 1000.0, n2, nm, n1);
    }

    @Test
    void passesThroughAnyConsistentPeaks() {
        Random random = new Random(5L);
        for (int k = 0; k < 300; k++) {
            double n1 = 1000.0 + 4000.0 * random.nextDouble();
            double n2 = n1 * (1.02 + 1.5 * random.nextDouble());
            double t1 = 50.0 + 900.0 * random.nextDouble();
            double lowest = t1 * rpm(n1).si();
            double highest = t1 * rpm(n2).si();
            double watts = lowest + (highest - lowest) * (0.001 + 0.998 * random.nextDouble());
            assertPeaksHold(of(watts / 1000.0, n2, t1, n1), watts, n2, t1, n1);
        }
    }

    private static void assertPeaksHold(PeakEstimate estimate, double watts, double n2, double t1, double n1) {
        SpeedBand band = estimate.band().orElseThrow();
        double from = band.lowest().toRpm() + 1e-6;
        double to = band.highest().toRpm() - 1e-6;
        double before = estimate.torqueAt(rpm(from)).orThrow().si();
        for (int i = 1; i <= 400; i++) {
            AngularSpeed n = rpm(from + (to - from) * i / 400.0);
            double torque = estimate.torqueAt(n).orThrow().si();
            assertThat(torque).isLessThanOrEqualTo(t1 * (1.0 + 1e-12));
            assertThat(torque * n.si()).isLessThanOrEqualTo(watts * (1.0 + 1e-12));
            if (n.toRpm() <= n1) {
                assertThat(torque).isGreaterThanOrEqualTo(before);
            } else if (n.toRpm() - n1 > (to - from) / 400.0) {
                assertThat(torque).isLessThanOrEqualTo(before * (1.0 + 1e-12));
            }
            before = torque;
        }
        assertThat(estimate.torqueAt(rpm(n1)).orThrow().si()).isCloseTo(t1, within(1e-9 * t1));
        assertThat(estimate.torqueAt(rpm(n2)).orThrow().si() * rpm(n2).si()).isCloseTo(watts, within(1e-9 * watts));
        double h = 1e-6 * n2;
        double left =
                estimate.torqueAt(rpm(n2 - h)).orThrow().si() * rpm(n2 - h).si();
        double right =
                estimate.torqueAt(rpm(n2 + h)).orThrow().si() * rpm(n2 + h).si();
        assertThat(left).isCloseTo(watts, within(1e-6 * watts));
        assertThat(right).isCloseTo(watts, within(1e-6 * watts));
    }

    @Test
    void torqueAndSlopeAreContinuousWhereTheShapeChanges() {
        PeakShape heldTorque = new PeakShape(160.0, 400.0, 500.0, 400.0 * 498.0);
        assertThat(heldTorque.torqueHeldTo()).isGreaterThan(160.0);
        assertSmooth(heldTorque, heldTorque.torqueHeldTo());
        PeakShape heldPower = new PeakShape(150.0, 500.0, 450.0, 500.0 * 180.0);
        assertThat(heldPower.powerHeldFrom()).isLessThan(450.0);
        assertSmooth(heldPower, heldPower.powerHeldFrom());
        assertSmooth(heldPower, 150.0);
        assertSmooth(heldPower, 450.0);
    }

    private static void assertSmooth(PeakShape shape, double n) {
        double h = 1e-4;
        double left = (shape.torqueAt(n) - shape.torqueAt(n - h)) / h;
        double right = (shape.torqueAt(n + h) - shape.torqueAt(n)) / h;
        assertThat(left).isCloseTo(right, within(1e-3));
    }

    @Test
    void isAlwaysFlagged() {
        assertThat(of(313, 5700, 624, 4100).assumptions())
                .hasSize(1)
                .allMatch(assumption ->
                        assumption.flagged() && assumption.statement().contains("estimate"));
    }

    @Test
    void saysNothingFarFromThePeaks() {
        PeakEstimate estimate = of(313, 5700, 624, 4100);
        assertThat(estimate.torqueAt(rpm(2049)).reason().orElseThrow()).contains("below 2050 rpm");
        assertThat(estimate.torqueAt(rpm(6841)).reason().orElseThrow()).contains("above 6840 rpm");
        assertThat(estimate.torqueAt(rpm(6839)).value()).isPresent();
        assertThat(estimate.slowestMeasurement()).isEmpty();
    }

    @Test
    void rejectsPeaksThatContradictEachOther() {
        assertRefused(313, 4100, 624, 4100, "lies no higher than peak torque at 4100 rpm");
        assertRefused(313, 4000, 624, 4100, "lies no higher");
        assertRefused(400, 5700, 624, 4100, "more than the peak torque");
        assertRefused(200, 5700, 624, 4100, "more than the peak power");
        assertRefused(0.0, 5700, 624, 4100, "out of range");
    }

    private static void assertRefused(double kw, double n2, double nm, double n1, String part) {
        assertThatThrownBy(() -> of(kw, n2, nm, n1))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining(part);
    }

    @Test
    void explainsEveryPartOfTheShape() {
        PeakEstimate peaky = of(313, 5700, 624, 4100);
        assertThat(formula(peaky, 3000)).contains("0.2 (1 - n / n_1)^2");
        assertThat(formula(peaky, 5000)).contains("cubic");
        assertThat(formula(peaky, 6000)).contains("1 + x - x^2");
        assertThat(formula(of(200, 4800, 400, 1600), 2000)).contains("held until");
        assertThat(formula(of(85, 3600, 500, 1600), 3500)).isEqualTo("T = P_2 / n");
        assertThat(peaky.torqueWorking(rpm(100)).value()).isEmpty();
        assertThat(peaky.peakTorqueWorking().orThrow().steps()).hasSize(1);
        assertThat(peaky.peakPowerWorking().orThrow().steps()).hasSize(2);
    }

    private static String formula(PeakEstimate estimate, double n) {
        return estimate.torqueWorking(rpm(n)).orThrow().steps().get(0).formula();
    }

    @Test
    void equalsAnEstimateFromTheSamePeaks() {
        PeakEstimate one = of(313, 5700, 624, 4100);
        assertThat(one).isEqualTo(of(313, 5700, 624, 4100)).hasSameHashCodeAs(of(313, 5700, 624, 4100));
        assertThat(one)
                .isNotEqualTo(of(314, 5700, 624, 4100))
                .isNotEqualTo(of(313, 5701, 624, 4100))
                .isNotEqualTo(of(313, 5700, 625, 4100))
                .isNotEqualTo(of(313, 5700, 624, 4101))
                .isNotEqualTo("peaks");
        assertThat(one).hasToString("313 kW at 5700 rpm, 624 Nm at 4100 rpm");
    }
}
