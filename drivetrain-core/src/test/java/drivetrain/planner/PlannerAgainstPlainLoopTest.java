package drivetrain.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Counts, picks and their order are those of the plain loop, to the last bit of the scores. */
class PlannerAgainstPlainLoopTest {

    private static final long SEED = 20250601L;

    @Test
    void selectsWhatThePlainLoopSelectsOnRandomShelves() {
        Random random = new Random(SEED);
        for (int i = 0; i < 80_000; i++) {
            Query query = RandomShelf.query(random, false);
            check(query, 1, "declared, case " + i);
        }
    }

    @Test
    void selectsWhatThePlainLoopSelectsWhereFiguresAreVisited() {
        Random random = new Random(SEED + 1);
        for (int i = 0; i < 20_000; i++) {
            check(RandomShelf.query(random, true), 1, "visited, case " + i);
        }
    }

    @Test
    void findsTheFrontThatThePlainLoopFinds() {
        Random random = new Random(SEED + 2);
        for (int i = 0; i < 20_000; i++) {
            Query query = RandomShelf.query(random, false);
            if (!query.objectives().isEmpty()) {
                List<Objective> unweighted = query.objectives().stream()
                        .map(wish -> new Objective(wish.figure(), wish.goal(), 1.0, wish.target()))
                        .toList();
                Query plain = new Query(query.sizes(), query.constraints(), unweighted, 1);
                assertThat(Planner.on(1).front(query, Watch.PATIENT).stream()
                                .map(Pick::choice)
                                .toList())
                        .as("front, case %d: %s", i, query)
                        .isEqualTo(PlainLoop.front(plain));
            }
        }
    }

    private static void check(Query query, int threads, String which) {
        Selection expected = PlainLoop.select(query);
        Selection selected = Planner.on(threads).select(query, Watch.PATIENT);
        if (!selected.equals(expected)) {
            assertThat(selected).as(which + ": " + query).isEqualTo(expected);
        }
    }
}
