package drivetrain.planner;

import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;

/**
 * Answers queries. The answers do not depend on the count of threads.
 *
 * <p>A query whose figures are all declared is counted and ranked without visiting its combinations; one visited figure makes it visit those that the
 * other constraints leave. Interrupting the thread cancels the work, as does the {@link Watch}.
 */
public final class Planner {

    private final int threads;

    private Planner(int threads) {
        this.threads = threads;
    }

    /**
     * Makes a planner that uses the processors of the machine.
     *
     * @return the planner
     */
    public static Planner onAllProcessors() {
        return new Planner(Runtime.getRuntime().availableProcessors());
    }

    /**
     * Makes a planner.
     *
     * @param threads how many threads it may use, at least 1; work of a few milliseconds never uses more than one
     * @return the planner
     * @throws drivetrain.refusal.RefusedException if the count is below 1
     */
    public static Planner on(int threads) {
        if (threads < 1) {
            throw Refusal.of("threads", Integer.toString(threads), "is no count of threads")
                    .allowing("1 or more")
                    .asException();
        }
        return new Planner(threads);
    }

    /**
     * Returns how many threads it uses for long work.
     *
     * @return the count, at least 1
     */
    public int threads() {
        return threads;
    }

    /**
     * Counts and ranks.
     *
     * @param asked the query
     * @param watch looks on
     * @return how many combinations pass, and the best of them
     * @throws CancellationException if the work was canceled
     */
    public Selection select(Query asked, Watch watch) {
        long combinations = asked.combinations();
        Kept kept = Kept.of(asked);
        Query query = kept.query();
        BestList best = new BestList(query.best());
        Terms scored = Terms.scored(query);
        List<Axis> axes = axes(kept, scored, columns(query.figures()));
        if (isEmpty(axes)) {
            return new Selection(combinations, 0, List.of());
        }
        if (query.figures().stream().anyMatch(Visited.class::isInstance)) {
            long passing = visit(query, scored, axes, best, watch);
            return new Selection(combinations, passing, best.best());
        }
        Terms terms = Terms.ofConstraints(query);
        List<Axis> counted = axes(kept, terms, columns(constrained(query)));
        long passing = count(terms, counted, watch);
        if (passing > 0 && best.most() > 0) {
            rank(query, scored, axes, terms, counted, best, watch);
        }
        return new Selection(combinations, passing, best.best());
    }

    /**
     * Finds the combinations that pass and that no other such one equals or betters in every objective and betters in one. Figures that agree to nine
     * digits count as equal, and of combinations that are equal in every objective the first one stands for all.
     *
     * @param query the query; the weights of its objectives and how many of the best are wanted are not looked at
     * @param watch looks on
     * @return the front, by the first objective, then by the second and so on; the scores are 0
     * @throws drivetrain.refusal.RefusedException if there is no objective or if a figure is visited
     * @throws CancellationException if the work was canceled
     */
    public List<Pick> front(Query query, Watch watch) {
        if (query.objectives().isEmpty() || query.figures().stream().anyMatch(Visited.class::isInstance)) {
            throw Refusal.of("front", query.objectives().size() + " objectives", "cannot be drawn")
                    .allowing("one or more objectives, and only figures that say how they move")
                    .asException();
        }
        List<Objective> unweighted = query.objectives().stream()
                .map(wish -> new Objective(wish.figure(), wish.goal(), 1.0, wish.target()))
                .toList();
        Kept kept = Kept.of(new Query(query.sizes(), query.constraints(), unweighted, 1));
        Query plain = kept.query();
        Terms scored = Terms.scored(plain);
        Terms terms = Terms.ofConstraints(plain);
        List<Axis> axes = axes(kept, scored, columns(plain.figures()));
        if (isEmpty(axes)) {
            return List.of();
        }
        List<Axis> counted = axes(kept, terms, columns(constrained(plain)));
        BooleanSupplier isCanceled =
                () -> watch.isCanceled() || Thread.currentThread().isInterrupted();
        Counter counter = new Counter(terms, counted, isCanceled);
        return new FrontSearch(plain, scored, axes, counter, counted, isCanceled).run();
    }

    private static List<Figure> constrained(Query query) {
        return query.constraints().stream().map(Constraint::figure).toList();
    }

    private static List<Column> columns(List<Figure> figures) {
        return figures.stream()
                .flatMap(figure -> figure.columns().stream())
                .distinct()
                .toList();
    }

    private static List<Axis> axes(Kept kept, Terms terms, List<Column> told) {
        Query query = kept.query();
        List<Figure> declared = query.figures().stream()
                .filter(figure -> !(figure instanceof Visited))
                .toList();
        List<Column> needed = columns(declared);
        List<Axis> axes = new ArrayList<>();
        for (int d = 0; d < query.sizes().size(); d++) {
            axes.add(Axis.of(d, kept.choices(d), terms, needed, told));
        }
        return axes;
    }

    private static boolean isEmpty(List<Axis> axes) {
        return axes.stream().anyMatch(axis -> axis.size() == 0);
    }

    private long count(Terms terms, List<Axis> axes, Watch watch) {
        AtomicLong passing = new AtomicLong();
        Prefixes prefixes = new Counter(terms, axes, () -> false).prefixes(threads);
        new Crew(threads, watch).run(prefixes.tasks(), isCanceled -> {
            Counter counter = new Counter(terms, axes, isCanceled);
            return task -> passing.addAndGet(counter.countBelow(prefixes.of(task)));
        });
        return passing.get();
    }

    private void rank(
            Query query, Terms scored, List<Axis> axes, Terms terms, List<Axis> counted, BestList best, Watch watch) {
        Prefixes prefixes =
                ranker(query, scored, axes, terms, counted, best, () -> false).prefixes(threads);
        new Crew(threads, watch).run(prefixes.tasks(), isCanceled -> {
            Ranker ranker = ranker(query, scored, axes, terms, counted, best, isCanceled);
            return task -> ranker.rankBelow(prefixes.of(task));
        });
    }

    private static Ranker ranker(
            Query query,
            Terms scored,
            List<Axis> axes,
            Terms terms,
            List<Axis> counted,
            BestList best,
            BooleanSupplier isCanceled) {
        Counter counter = new Counter(terms, counted, isCanceled);
        return new Ranker(query, scored, axes, counter, counted, best, isCanceled);
    }

    private long visit(Query query, Terms terms, List<Axis> axes, BestList best, Watch watch) {
        AtomicLong passing = new AtomicLong();
        Prefixes prefixes = new RowVisitor(query, terms, axes, best, () -> false).prefixes(threads);
        new Crew(threads, watch).run(prefixes.tasks(), isCanceled -> {
            RowVisitor visitor = new RowVisitor(query, terms, axes, best, isCanceled);
            return task -> passing.addAndGet(visitor.countBelow(prefixes.of(task)));
        });
        return passing.get();
    }
}
