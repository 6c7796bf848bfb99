package drivetrain.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.refusal.RefusedException;
import java.util.List;
import org.junit.jupiter.api.Test;

class FigureTest {

    private static final Column A = Column.of(0, 2.0, 3.0);
    private static final Column B = Column.of(1, 4.0, Double.NaN);

    @Test
    void multipliesAndDividesFromLeftToRight() {
        Product product = Product.of(6.0).over(A).times(B);
        assertThat(product.at(new int[] {1, 0})).isEqualTo(6.0 / 3.0 * 4.0);
        assertThat(product.columns()).containsExactly(A, B);
    }

    @Test
    void hasNoValueWhereAColumnHasNone() {
        assertThat(Product.of(1.0).times(A).times(B).at(new int[] {0, 1})).isNaN();
        assertThat(Extreme.least(Product.of(1.0).times(A), Product.of(1.0).times(B))
                        .at(new int[] {0, 1}))
                .isNaN();
    }

    @Test
    void takesTheLeastOrTheGreatest() {
        Product a = Product.of(1.0).times(A);
        Product b = Product.of(1.0).times(B);
        assertThat(Extreme.least(a, b).at(new int[] {0, 0})).isEqualTo(2.0);
        assertThat(Extreme.greatest(a, b).at(new int[] {0, 0})).isEqualTo(4.0);
        assertThat(Extreme.greatest(a, b).columns()).containsExactly(A, B);
    }

    @Test
    void visitsByRowOrOneByOne() {
        Visited row = Visited.of(
                (x, from, to, out) -> {
                    for (int i = from; i < to; i++) {
                        out[i] = x[0][i] - x[1][i];
                    }
                },
                A,
                B);
        Visited each = Visited.of(RowFormula.each(x -> x[0] - x[1]), A, B);
        assertThat(row.at(new int[] {1, 0})).isEqualTo(-1.0).isEqualTo(each.at(new int[] {1, 0}));
    }

    @Test
    void countsIndices() {
        Column indices = Column.ofIndices(2, 3);
        assertThat(indices.size()).isEqualTo(3);
        assertThat(indices.value(2)).isEqualTo(2.0);
        assertThat(indices.dimension()).isEqualTo(2);
    }

    @Test
    void refusesNumbersThatAreNone() {
        assertThatThrownBy(() -> Column.of(0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Column.of(-1, 1.0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Column.ofIndices(0, 0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Column.of(0, Double.POSITIVE_INFINITY)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Product.of(0.0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Product.of(Double.NaN)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Product.of(1.0).times(Column.of(0, -1.0))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Product.of(1.0).times(Column.of(0, 1e31))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> new Extreme(true, List.of())).isInstanceOf(RefusedException.class);
        Product nine = Product.of(1.0);
        for (int i = 0; i < 9; i++) {
            nine = nine.times(A);
        }
        Product most = nine;
        assertThatThrownBy(() -> most.times(A)).hasMessageContaining("too many columns");
    }

    @Test
    void passesNoNumberThatIsNone() {
        Constraint open = Constraint.between(Product.of(1.0), Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        assertThat(open.passes(Double.NaN)).isFalse();
        assertThat(open.passes(0.0)).isTrue();
        assertThatThrownBy(() -> Constraint.atLeast(Product.of(1.0), Double.NaN))
                .isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Constraint.between(Product.of(1.0), 2.0, 1.0)).isInstanceOf(RefusedException.class);
    }

    @Test
    void scoresByProportion() {
        Product any = Product.of(1.0);
        assertThat(Objective.lowest(any, 2.0).score(Math.E)).isEqualTo(2.0);
        assertThat(Objective.highest(any, 2.0).score(Math.E)).isEqualTo(-2.0);
        assertThat(Objective.nearest(any, 1.0, 10.0).score(5.0)).isEqualTo(Math.log(2.0));
        assertThat(Objective.nearest(any, 1.0, 10.0).score(20.0)).isEqualTo(Math.log(2.0));
        for (double none : new double[] {0.0, -1.0, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThat(Objective.lowest(any, 1.0).score(none)).isNaN();
        }
        assertThatThrownBy(() -> Objective.lowest(any, 0.0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Objective.nearest(any, 1.0, Double.NaN)).isInstanceOf(RefusedException.class);
    }
}
