package drivetrain.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Torque;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TorqueCurveTest {

    /** Invented figures. */
    private static final List<OperatingPoint> POINTS = List.of(
            point(1000, 310), point(2500, 400), point(4100, 460), point(5000, 435), point(5700, 387), point(6600, 300));

    private static final TorqueCurve CURVE = TorqueCurve.of(POINTS);

    private static OperatingPoint point(double rpm, double poundFeet) {
        return OperatingPoint.of(rpm(rpm), Torque.ofPoundFeet(poundFeet));
    }

    private static AngularSpeed rpm(double rpm) {
        return AngularSpeed.ofRpm(rpm);
    }

    @Test
    void givesBackEveryMeasuredPoint() {
        for (OperatingPoint point : POINTS) {
            assertThat(CURVE.torqueAt(point.speed()).orThrow()).isEqualTo(point.torque());
        }
        assertThat(CURVE.points()).isEqualTo(POINTS);
    }

    @Test
    void staysBetweenNeighboringPoints() {
        double torque = CURVE.torqueAt(rpm(3300)).orThrow().toPoundFeet();
        assertThat(torque).isBetween(400.0, 460.0);
    }

    @Test
    void saysWhereItEndsInsteadOfExtrapolating() {
        assertThat(CURVE.torqueAt(rpm(999)).reason().orElseThrow())
                .isEqualTo("the torque curve starts at 1000 rpm and nothing is extrapolated");
        assertThat(CURVE.torqueAt(rpm(6601)).reason().orElseThrow())
                .isEqualTo("the torque curve ends at 6600 rpm and nothing is extrapolated");
        assertThat(CURVE.band()).contains(new SpeedBand(rpm(1000), rpm(6600)));
        assertThat(CURVE.slowestMeasurement()).contains(POINTS.get(0));
        assertThat(CURVE.assumptions()).isEmpty();
    }

    @Test
    void peaksAreExactOnTheInterpolation() {
        assertThat(CURVE.peakTorque().orThrow()).isEqualTo(POINTS.get(2));
        OperatingPoint peak = CURVE.peakPower().orThrow();
        assertThat(peak.speed().toRpm()).isBetween(5000.0, 6600.0);
        for (double n = 1000.0; n <= 6600.0; n += 1.0) {
            double power = CURVE.torqueAt(rpm(n)).orThrow().at(rpm(n)).si();
            assertThat(power).isLessThanOrEqualTo(peak.power().si() * (1.0 + 1e-12));
        }
        double h = 1e-3;
        double before = powerAt(peak.speed().toRpm() - h);
        double after = powerAt(peak.speed().toRpm() + h);
        assertThat((after - before) / peak.power().si()).isCloseTo(0.0, within(1e-10));
    }

    private static double powerAt(double n) {
        return CURVE.torqueAt(rpm(n)).orThrow().at(rpm(n)).si();
    }

    @Test
    void powerIsTorqueTimesSpeed() {
        // definition: 1 hp = 550 ft·lbf/s, so hp and lb·ft cross at 33000/(2 pi) = 5252.1 rpm
        OperatingPoint crossing = point(33_000.0 / (2.0 * Math.PI), 400.0);
        assertThat(crossing.power().toHorsepower()).isCloseTo(400.0, within(1e-9));
        assertThat(OperatingPoint.of(crossing.speed(), crossing.power())
                        .torque()
                        .toPoundFeet())
                .isCloseTo(400.0, within(1e-9));
    }

    @Test
    void flatCurvePeaksInPowerAtItsEnd() {
        TorqueCurve flat = TorqueCurve.of(List.of(point(1500, 400), point(3000, 400), point(4500, 400)));
        assertThat(flat.peakPower().orThrow().speed().toRpm()).isCloseTo(4500.0, within(1e-9));
        assertThat(flat.peakTorque().orThrow().speed().toRpm()).isCloseTo(1500.0, within(1e-9));
    }

    @Test
    void rejectsTooFewAndTooManyPoints() {
        assertThatThrownBy(() -> TorqueCurve.of(POINTS.subList(0, 2)))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("2 points")
                .hasMessageContaining("3 to 1000 points");
        List<OperatingPoint> many = new ArrayList<>();
        for (int i = 0; i <= TorqueCurve.MOST_POINTS; i++) {
            many.add(point(1000 + i, 400));
        }
        assertThatThrownBy(() -> TorqueCurve.of(many)).isInstanceOf(RefusedException.class);
    }

    @Test
    void rejectsSpeedsThatDoNotRise() {
        assertThatThrownBy(() -> TorqueCurve.of(List.of(point(1000, 1), point(2000, 2), point(2000, 3))))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("2000 rpm after 2000 rpm");
    }

    @Test
    void rejectsPointsThatNoEngineMakes() {
        assertThatThrownBy(() -> point(0.0, 300.0))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("30000 rpm");
        assertThatThrownBy(() -> point(40_000.0, 300.0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> point(1000.0, -5.0))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("Nm");
        assertThatThrownBy(() -> point(1000.0, 1e6)).isInstanceOf(RefusedException.class);
    }

    @Test
    void explainsItself() {
        var torque = CURVE.torqueWorking(rpm(3000)).orThrow();
        assertThat(torque.question()).isEqualTo("engine torque at 3000 rpm");
        assertThat(torque.steps()).hasSize(1);
        assertThat(CURVE.torqueWorking(rpm(100)).value()).isEmpty();
        var peak = CURVE.peakPowerWorking().orThrow();
        assertThat(peak.steps()).hasSize(3);
        assertThat(peak.steps().get(2).result().text(UnitSystem.US)).endsWith(" hp");
        assertThat(CURVE.peakTorqueWorking().orThrow().sources()).isNotEmpty();
    }

    @Test
    void equalsACurveThroughTheSamePoints() {
        assertThat(TorqueCurve.of(POINTS))
                .isEqualTo(CURVE)
                .hasSameHashCodeAs(CURVE)
                .isNotEqualTo("curve");
        assertThat(TorqueCurve.of(POINTS.subList(0, 4))).isNotEqualTo(CURVE);
        assertThat(CURVE)
                .hasToString("310 lb-ft at 1000 rpm, 400 lb-ft at 2500 rpm, 460 lb-ft at 4100 rpm, "
                        + "435 lb-ft at 5000 rpm, 387 lb-ft at 5700 rpm, 300 lb-ft at 6600 rpm");
    }
}
