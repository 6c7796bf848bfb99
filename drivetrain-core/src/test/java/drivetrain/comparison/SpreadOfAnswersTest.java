package drivetrain.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Speed;
import drivetrain.quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sensitivity and tolerance against what a monomial must give, by hand. */
class SpreadOfAnswersTest {

    private static final Measure RPM = Measures.engineSpeedAt(Speed.ofMilesPerHour(65.0));

    private static double change(Sensitivity sensitivity, Measure measure, Lever lever) {
        return sensitivity.rows().stream()
                .filter(row -> row.measure().key().equals(measure.key()))
                .findFirst()
                .orElseThrow()
                .changes()
                .get(sensitivity.levers().indexOf(lever))
                .orThrow();
    }

    @Test
    void movesByThePowersOfAMonomial() {
        Sensitivity sensitivity = Sensitivity.of(TestShelf.order(), Measures.all(TestShelf.order()));
        assertThat(sensitivity.levers())
                .containsExactly(
                        Lever.TIRE,
                        Lever.AXLE,
                        Lever.FIRST_GEAR,
                        Lever.TOP_GEAR,
                        Lever.TRANSFER_LOW,
                        Lever.IDLE,
                        Lever.SHAFT_DIAMETER);
        assertThat(change(sensitivity, RPM, Lever.TIRE)).isCloseTo(1.0 / 1.01 - 1.0, within(1e-12));
        assertThat(change(sensitivity, RPM, Lever.AXLE)).isCloseTo(0.01, within(1e-12));
        assertThat(change(sensitivity, RPM, Lever.FIRST_GEAR)).isZero();
        assertThat(change(sensitivity, Measures.CRAWL_SPEED, Lever.IDLE)).isCloseTo(0.01, within(1e-12));
        assertThat(change(sensitivity, Measures.CRAWL_SPEED, Lever.TRANSFER_LOW))
                .isCloseTo(1.0 / 1.01 - 1.0, within(1e-12));
        assertThat(change(sensitivity, Measures.SHAFT_SPEED, Lever.TIRE)).isCloseTo(1.0 / 1.01 - 1.0, within(1e-12));
        assertThat(sensitivity.rows()).noneMatch(row -> row.measure() == Measures.SPEEDOMETER);
    }

    @Test
    void saysWhereOnePercentMoreCannotBe() {
        Combination odd =
                Combination.resolve(TestShelf.ORDER.with(Slot.TRANSMISSION, "4.03 0.672 0.67"), TestShelf.CATALOG);
        Sensitivity sensitivity = Sensitivity.of(odd, List.of(RPM));
        assertThat(sensitivity.rows().get(0).changes().get(3).reason().orElseThrow())
                .contains("cannot be");
    }

    /** rpm is proportional to axle / tire: its extremes are 1.01 / 0.98 and 0.99 / 1.02 of it. */
    @Test
    void spansTheExtremesOfAMonomial() {
        Tolerance tolerance = Tolerance.of(
                TestShelf.order(),
                List.of(RPM),
                List.of(Uncertain.of(Lever.TIRE, 0.02), Uncertain.of(Lever.AXLE, 0.01)));
        Tolerance.Row row = tolerance.rows().get(0);
        assertThat(row.greatest() / row.number()).isCloseTo(1.01 / 0.98, within(1e-12));
        assertThat(row.least() / row.number()).isCloseTo(0.99 / 1.02, within(1e-12));
    }

    /** A uniform factor within 1 +- d has its 5 % quantile at 1 - 0.9 d; with 2000 samples that is good to some 0.05 d. */
    @Test
    void drawsTheQuantilesOfAUniformFactor() {
        Tolerance.Row row = Tolerance.of(TestShelf.order(), List.of(RPM), List.of(Uncertain.of(Lever.AXLE, 0.02)))
                .rows()
                .get(0);
        assertThat(row.q05() / row.number()).isCloseTo(1.0 - 0.9 * 0.02, within(0.001));
        assertThat(row.median() / row.number()).isCloseTo(1.0, within(0.0015));
        assertThat(row.q95() / row.number()).isCloseTo(1.0 + 0.9 * 0.02, within(0.001));
    }

    /**
     * The variance of the logarithm of a product of uniform factors is the sum of d^2 / 3, and that of four of them is nearly normal: 5 % and 95 % lie 1.645
     * standard deviations off (analytic propagation, textbook).
     */
    @Test
    void agreesWithAnalyticPropagationForSeveralFigures() {
        List<Uncertain> tolerances = List.of(
                Uncertain.of(Lever.TIRE, 0.02),
                Uncertain.of(Lever.AXLE, 0.02),
                Uncertain.of(Lever.FIRST_GEAR, 0.02),
                Uncertain.of(Lever.TRANSFER_LOW, 0.02));
        Tolerance.Row row = Tolerance.of(TestShelf.order(), List.of(Measures.CRAWL_SPEED), tolerances)
                .rows()
                .get(0);
        double deviation = Math.sqrt(4.0 * 0.02 * 0.02 / 3.0);
        assertThat(Math.log(row.q95() / row.median())).isCloseTo(1.645 * deviation, within(0.06 * 1.645 * deviation));
        assertThat(Math.log(row.q05() / row.median())).isCloseTo(-1.645 * deviation, within(0.06 * 1.645 * deviation));
    }

    @Test
    void answersTheSameEachTime() {
        List<Uncertain> tolerances = List.of(Uncertain.of(Lever.TIRE, 0.02), Uncertain.of(Lever.IDLE, 0.05));
        List<Measure> measures = Measures.all(TestShelf.order());
        assertThat(Tolerance.of(TestShelf.order(), measures, tolerances))
                .isEqualTo(Tolerance.of(TestShelf.order(), measures, tolerances));
    }

    @Test
    void refusesImpossibleTolerances() {
        Combination order = TestShelf.order();
        assertThatThrownBy(() -> Tolerance.of(order, List.of(RPM), List.of())).hasMessageContaining("not given");
        assertThatThrownBy(() -> Tolerance.of(order, List.of(RPM), List.of(Uncertain.of(Lever.TIRE, 0.5))))
                .hasMessageContaining("no tolerance");
        assertThatThrownBy(() -> Tolerance.of(order, List.of(RPM), List.of(Uncertain.of(Lever.OVERDRIVE, 0.01))))
                .hasMessageContaining("no overdrive is chosen");
    }

    /** Peak torque of a curve whose points are all off by a fraction is off by it; drawn one by one, the greatest of several is not as far off. */
    @Test
    void spreadsTheTorqueOfEveryMeasuredPoint() {
        Combination order = Combination.resolve(
                TestShelf.ORDER.with(
                        Slot.ENGINE,
                        "300 lb-ft at 1500 rpm, 400 lb-ft at 3000 rpm, 398 lb-ft at 4000 rpm, 330 lb-ft at 5000 rpm, max 5500 rpm"),
                TestShelf.CATALOG);
        Tolerance.Row row = Tolerance.of(order, List.of(Measures.PEAK_TORQUE), List.of(Uncertain.torqueCurve(0.03)))
                .rows()
                .get(0);
        assertThat(row.greatest() / row.number()).isCloseTo(1.03, within(1e-9));
        assertThat(row.least() / row.number()).isCloseTo(0.97, within(1e-9));
        assertThat(row.median()).isGreaterThan(row.number());
        assertThat(row.q05() / row.number()).isGreaterThan(0.98);
        assertThat(row.q95()).isLessThan(row.greatest());
        assertThatThrownBy(() -> Tolerance.of(
                        TestShelf.order(), List.of(Measures.PEAK_TORQUE), List.of(Uncertain.torqueCurve(0.03))))
                .hasMessageContaining("no torque curve with measured points");
    }

    /**
     * One plane, output and pinion level, shaft falling 4 deg: both joints bend 4 deg and cancel. With errors of 0.5 deg of each of the three angles the first joint
     * bends at most 4 + 1 deg (by hand), and the residual is at most sqrt(5^2 - 4^2) = 3 deg, at shaft +0.5, output -0.5 and pinion +0.5.
     */
    @Test
    void spreadsTheMeasuredAngles() {
        Combination order = Combination.resolve(
                TestShelf.ORDER
                        .with(Slot.REAR_SHAFT, TestShelf.SHAFT + " yokes 1.3 kg 60 mm long in phase")
                        .with(Slot.REAR_LINE, "output level, shaft 1290 mm 4 deg down 0 mm left, pinion level"),
                TestShelf.CATALOG);
        Tolerance tolerance = Tolerance.of(
                order,
                List.of(Measures.JOINT_ANGLE, Measures.RESIDUAL_ANGLE, RPM),
                List.of(Uncertain.angles(Angle.ofDegrees(0.5))));
        Tolerance.Row joint = tolerance.rows().get(0);
        assertThat(Math.toDegrees(joint.number())).isCloseTo(4.0, within(1e-9));
        assertThat(Math.toDegrees(joint.greatest())).isCloseTo(5.0, within(1e-9));
        Tolerance.Row residual = tolerance.rows().get(1);
        assertThat(Math.toDegrees(residual.number())).isLessThan(1e-5);
        assertThat(Math.toDegrees(residual.greatest())).isCloseTo(3.0, within(1e-6));
        assertThat(residual.least()).isEqualTo(residual.number());
        assertThat(residual.q95()).isBetween(residual.median(), residual.greatest());
        Tolerance.Row rpm = tolerance.rows().get(2);
        assertThat(rpm.least()).isEqualTo(rpm.number()).isEqualTo(rpm.greatest());
        assertThatThrownBy(() ->
                        Tolerance.of(TestShelf.order(), List.of(RPM), List.of(Uncertain.angles(Angle.ofDegrees(0.5)))))
                .hasMessageContaining("not evaluated because");
    }

    @Test
    void readsWhatIsUncertain() {
        assertThat(UncertainWords.parse("tire", "1 %").text(UnitSystem.US))
                .isEqualTo("rolling circumference within 1.00 %");
        assertThat(UncertainWords.parse("Torque curve", "+/- 3 %").word()).isEqualTo("torque curve");
        assertThat(UncertainWords.parse("angles", "\u00b10.5 deg").text(UnitSystem.US))
                .contains("0.50 deg");
        assertThatThrownBy(() -> UncertainWords.parse("tire", "-3 %")).hasMessageContaining("counts both ways");
        assertThatThrownBy(() -> UncertainWords.parse("angles", "9 deg")).hasMessageContaining("at most 5 deg");
        assertThatThrownBy(() -> UncertainWords.parse("tyres and wheels", "3 %"))
                .hasMessageContaining("no figure that a tolerance");
    }
}
