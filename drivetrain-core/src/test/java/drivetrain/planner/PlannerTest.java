package drivetrain.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class PlannerTest {

    private static final Column GEARS = Column.of(0, 2.0, 3.0, 4.0);
    private static final Column AXLES = Column.of(1, 3.0, 4.0);
    private static final Product CRAWL = Product.of(1.0).times(GEARS).times(AXLES);

    private static Query query(List<Constraint> constraints, List<Objective> objectives, int best) {
        return new Query(List.of(3, 2), constraints, objectives, best);
    }

    @Test
    void countsAndRanksByHand() {
        Selection selection = Planner.on(1)
                .select(
                        query(List.of(Constraint.between(CRAWL, 8.0, 12.0)), List.of(Objective.highest(CRAWL, 1.0)), 2),
                        Watch.PATIENT);
        assertThat(selection.combinations()).isEqualTo(6);
        assertThat(selection.passing()).isEqualTo(4);
        assertThat(selection.best()).extracting(Pick::choice).containsExactly(List.of(1, 1), List.of(2, 0));
    }

    @Test
    void takesTheFirstOnesWhereNothingIsWished() {
        Selection selection = Planner.on(1).select(query(List.of(), List.of(), 3), Watch.PATIENT);
        assertThat(selection.passing()).isEqualTo(6);
        assertThat(selection.best())
                .extracting(Pick::choice)
                .containsExactly(List.of(0, 0), List.of(0, 1), List.of(1, 0));
    }

    @Test
    void passesNothingWhereEveryPartLacksTheNumber() {
        Figure lacking = Product.of(1.0).times(Column.of(0, Double.NaN, Double.NaN, Double.NaN));
        assertThat(Planner.on(1)
                        .select(query(List.of(Constraint.atLeast(lacking, 0.0)), List.of(), 3), Watch.PATIENT)
                        .passing())
                .isZero();
        assertThat(Planner.on(1).front(query(List.of(), List.of(Objective.lowest(lacking, 1.0)), 1), Watch.PATIENT))
                .isEmpty();
    }

    @Test
    void answersTheSameOnAnyNumberOfThreads() {
        Query query = large(60, 0.5);
        Selection one = Planner.on(1).select(query, Watch.PATIENT);
        for (int threads : new int[] {2, 3, 8}) {
            assertThat(Planner.on(threads).select(query, Watch.PATIENT)).isEqualTo(one);
        }
        assertThat(one.passing()).isPositive();
        assertThat(one.best()).hasSize(50).isSorted();
    }

    @Test
    void visitsTheSameOnAnyNumberOfThreads() {
        Query declared = large(24, 0.5);
        Visited visited = Visited.of(
                (x, from, to, out) -> {
                    for (int i = from; i < to; i++) {
                        out[i] = x[0][i] * x[1][i] + x[2][i] * x[3][i];
                    }
                },
                declared.constraints().get(0).figure().columns().toArray(Column[]::new));
        Query query = new Query(
                declared.sizes(),
                List.of(declared.constraints().get(0), Constraint.atMost(visited, 3.0)),
                List.of(Objective.highest(visited, 1.0), declared.objectives().get(0)),
                20);
        Selection one = Planner.on(1).select(query, Watch.PATIENT);
        assertThat(Planner.on(3).select(query, Watch.PATIENT)).isEqualTo(one);
        assertThat(one).isEqualTo(PlainLoop.select(query));
    }

    /** Five dimensions; four constraints near the middle of what is possible. */
    private static Query large(int size, double quantile) {
        Random random = new Random(3);
        List<Column> columns = new ArrayList<>();
        for (int d = 0; d < 4; d++) {
            columns.add(Column.of(d, random.doubles(size, 0.5, 2.0).toArray()));
        }
        Product all = Product.of(1.0);
        Product some = Product.of(1.0);
        for (int d = 0; d < 4; d++) {
            all = all.times(columns.get(d));
            some = d % 2 == 0 ? some.times(columns.get(d)) : some.over(columns.get(d));
        }
        return new Query(
                List.of(size, size, size, size),
                List.of(Constraint.between(all, quantile, 2.0), Constraint.between(some, 0.7, 1.4)),
                List.of(Objective.nearest(all, 1.0, 1.0), Objective.lowest(some, 0.3)),
                50);
    }

    @Test
    void looksOnlyAtWhatCanBeAmongTheBestWhereMillionsTie() {
        Column many = Column.of(1, new Random(1).doubles(3000, 1.0, 2.0).toArray());
        Column more = Column.of(2, new Random(2).doubles(3000, 1.0, 2.0).toArray());
        Figure engine = Product.of(1.0).times(GEARS);
        Figure rest = Product.of(1.0).times(GEARS).times(many).over(more);
        Query query = new Query(
                List.of(3, 3000, 3000),
                List.of(Constraint.atMost(rest, 4.0)),
                List.of(Objective.highest(engine, 1.0)),
                5);
        Selection selection = Planner.on(1).select(query, Watch.PATIENT);
        assertThat(selection.best()).hasSize(5).allMatch(pick -> pick.choice().get(0) == 2);
    }

    @Test
    void stopsWhenItIsCanceled() {
        Watch impatient = new Watch() {
            @Override
            public boolean isCanceled() {
                return true;
            }

            @Override
            public void progress(double fraction) {}
        };
        assertThatThrownBy(() -> Planner.on(2).select(large(200, 0.9), impatient))
                .isInstanceOf(CancellationException.class);
        assertThatThrownBy(() -> Planner.on(2).front(front(large(60, 0.9)), impatient))
                .isInstanceOf(CancellationException.class);
    }

    private static Query front(Query query) {
        return new Query(query.sizes(), query.constraints(), query.objectives(), 1);
    }

    @Test
    void stopsWhenItsThreadIsInterrupted() throws InterruptedException {
        AtomicInteger canceled = new AtomicInteger();
        CountDownLatch running = new CountDownLatch(1);
        Watch watch = new Watch() {
            @Override
            public boolean isCanceled() {
                running.countDown();
                return false;
            }

            @Override
            public void progress(double fraction) {}
        };
        Thread thread = new Thread(() -> {
            try {
                Planner.on(2).select(large(3000, 0.9), watch);
            } catch (CancellationException stopped) {
                canceled.incrementAndGet();
            }
        });
        thread.start();
        assertThat(running.await(10, TimeUnit.SECONDS)).isTrue();
        long start = System.nanoTime();
        thread.interrupt();
        thread.join(10_000);
        assertThat(canceled).hasValue(1);
        assertThat((System.nanoTime() - start) / 1e9).isLessThan(2.0);
    }

    @Test
    void tellsHowFarItIs() {
        List<Double> heard = new ArrayList<>();
        Watch watch = new Watch() {
            @Override
            public boolean isCanceled() {
                return false;
            }

            @Override
            public void progress(double fraction) {
                heard.add(fraction);
            }
        };
        Planner.on(2).select(large(150, 0.9).counting(), watch);
        assertThat(heard).isNotEmpty().isSorted().allMatch(fraction -> fraction > 0.0 && fraction <= 1.0);
    }

    @Test
    void refusesWhatDoesNotFit() {
        assertThatThrownBy(() -> Planner.on(0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> query(List.of(), List.of(), -1)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> new Query(List.of(3, 0), List.of(), List.of(), 1))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("no choices");
        assertThatThrownBy(() -> new Query(List.of(), List.of(), List.of(), 1)).isInstanceOf(RefusedException.class);
        int most = Integer.MAX_VALUE;
        assertThatThrownBy(() -> new Query(List.of(most, most, most), List.of(), List.of(), 1))
                .hasMessageContaining("too many combinations");
        assertThatThrownBy(() -> new Query(List.of(3), List.of(Constraint.atLeast(CRAWL, 1.0)), List.of(), 1))
                .hasMessageContaining("does not exist");
        assertThatThrownBy(() -> new Query(List.of(4, 2), List.of(Constraint.atLeast(CRAWL, 1.0)), List.of(), 1))
                .hasMessageContaining("another length");
        Visited visited = Visited.of(RowFormula.each(x -> x[0]), GEARS);
        assertThatThrownBy(() -> Planner.on(1)
                        .front(query(List.of(), List.of(Objective.lowest(visited, 1.0)), 1), Watch.PATIENT))
                .isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Planner.on(1).front(query(List.of(), List.of(), 1), Watch.PATIENT))
                .isInstanceOf(RefusedException.class);
    }

    @Test
    void usesEveryProcessorUnlessTold() {
        assertThat(Planner.onAllProcessors()
                        .select(query(List.of(), List.of(), 0), Watch.PATIENT)
                        .passing())
                .isEqualTo(6);
    }

    /** A formula that takes long is asked for no combination more once the search is given up, however long the row is. */
    @Test
    void givesASlowFormulaUpBetweenTwoCombinations() {
        AtomicInteger asked = new AtomicInteger();
        Watch afterThree = new Watch() {
            @Override
            public boolean isCanceled() {
                return asked.get() >= 3;
            }

            @Override
            public void progress(double fraction) {}
        };
        Visited slow = Visited.of(
                RowFormula.each(x -> {
                    asked.incrementAndGet();
                    return x[0] + 2.0 * x[1] + 1.0;
                }),
                Column.ofIndices(0, 2000),
                Column.ofIndices(1, 2));
        Query query = new Query(
                List.of(2000, 2), List.of(Constraint.atLeast(slow, 10.0)), List.of(Objective.lowest(slow, 1.0)), 5);
        assertThatThrownBy(() -> Planner.on(1).select(query, afterThree)).isInstanceOf(CancellationException.class);
        assertThat(asked).hasValue(3);
        assertThat(Planner.on(1).select(query, Watch.PATIENT).passing()).isEqualTo(4000 - 9 - 7);
    }
}
