package drivetrain.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.quantity.Speed;
import java.util.List;
import java.util.Map;
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
                        Lever.TIRE, Lever.AXLE, Lever.FIRST_GEAR, Lever.TOP_GEAR, Lever.TRANSFER_LOW, Lever.IDLE);
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
        Tolerance tolerance = Tolerance.of(TestShelf.order(), List.of(RPM), Map.of(Lever.TIRE, 0.02, Lever.AXLE, 0.01));
        Tolerance.Row row = tolerance.rows().get(0);
        assertThat(row.greatest() / row.number()).isCloseTo(1.01 / 0.98, within(1e-12));
        assertThat(row.least() / row.number()).isCloseTo(0.99 / 1.02, within(1e-12));
    }

    /** A uniform factor within 1 +- d has its 5 % quantile at 1 - 0.9 d; with 2000 samples that is good to some 0.05 d. */
    @Test
    void drawsTheQuantilesOfAUniformFactor() {
        Tolerance.Row row = Tolerance.of(TestShelf.order(), List.of(RPM), Map.of(Lever.AXLE, 0.02))
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
        Map<Lever, Double> tolerances =
                Map.of(Lever.TIRE, 0.02, Lever.AXLE, 0.02, Lever.FIRST_GEAR, 0.02, Lever.TRANSFER_LOW, 0.02);
        Tolerance.Row row = Tolerance.of(TestShelf.order(), List.of(Measures.CRAWL_SPEED), tolerances)
                .rows()
                .get(0);
        double deviation = Math.sqrt(4.0 * 0.02 * 0.02 / 3.0);
        assertThat(Math.log(row.q95() / row.median())).isCloseTo(1.645 * deviation, within(0.06 * 1.645 * deviation));
        assertThat(Math.log(row.q05() / row.median())).isCloseTo(-1.645 * deviation, within(0.06 * 1.645 * deviation));
    }

    @Test
    void answersTheSameEachTime() {
        Map<Lever, Double> tolerances = Map.of(Lever.TIRE, 0.02, Lever.IDLE, 0.05);
        List<Measure> measures = Measures.all(TestShelf.order());
        assertThat(Tolerance.of(TestShelf.order(), measures, tolerances))
                .isEqualTo(Tolerance.of(TestShelf.order(), measures, tolerances));
    }

    @Test
    void refusesImpossibleTolerances() {
        Combination order = TestShelf.order();
        assertThatThrownBy(() -> Tolerance.of(order, List.of(RPM), Map.of())).hasMessageContaining("not given");
        assertThatThrownBy(() -> Tolerance.of(order, List.of(RPM), Map.of(Lever.TIRE, 0.5)))
                .hasMessageContaining("no tolerance");
        assertThatThrownBy(() -> Tolerance.of(order, List.of(RPM), Map.of(Lever.OVERDRIVE, 0.01)))
                .hasMessageContaining("no overdrive is chosen");
    }
}
