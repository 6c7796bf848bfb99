package drivetrain.comparison;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Outcome;
import drivetrain.planner.Constraint;
import drivetrain.planner.Objective;
import drivetrain.planner.Pick;
import drivetrain.planner.Planner;
import drivetrain.planner.Query;
import drivetrain.planner.Selection;
import drivetrain.planner.Visited;
import drivetrain.planner.Watch;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;

/**
 * Every package that some lists of parts allow, put into an order: how many keep the wishes, and which are the best.
 *
 * @param base the order; what is not in a list stays as it is there
 * @param catalog the shelf
 * @param lists the lists, one for each place
 * @param wishes what a package is to keep
 * @param aims what is wished of it
 * @param best how many of the best are wanted
 */
public record Sweep(
        Specification base, Catalog catalog, List<PartList> lists, List<Wish> wishes, List<Aim> aims, int best) {

    /** The most rows that are shown. */
    public static final int MOST_ROWS = 1000;

    /**
     * Copies and checks.
     *
     * @throws drivetrain.refusal.RefusedException if there is no list, if two are for one place, or if too many rows are wanted
     */
    public Sweep {
        lists = List.copyOf(lists);
        wishes = List.copyOf(wishes);
        aims = List.copyOf(aims);
        if (lists.isEmpty()) {
            throw Refusal.of("sweep", "", "has no list of parts")
                    .allowing("a place and its parts, such as axle 3.73 or 4.10")
                    .asException();
        }
        Set<Slot> slots = new LinkedHashSet<>();
        for (PartList list : lists) {
            for (Slot slot : list.place().slots()) {
                if (!slots.add(slot)) {
                    throw Refusal.of("sweep", list.place().word(), "has two lists for the " + slot.word())
                            .allowing("one list for each place")
                            .asException();
                }
            }
        }
        if (best < 0 || best > MOST_ROWS) {
            throw Refusal.of("best", Integer.toString(best), "is no count of rows")
                    .allowing("1 to " + MOST_ROWS)
                    .asException();
        }
    }

    /**
     * Returns how many packages there are.
     *
     * @return the product of the lengths of the lists
     */
    public long combinations() {
        long product = 1;
        for (PartList list : lists) {
            product = Math.multiplyExact(product, list.choices().size());
        }
        return product;
    }

    /**
     * Runs the sweep.
     *
     * @param planner counts and ranks
     * @param watch looks on
     * @return what was found
     * @throws drivetrain.refusal.RefusedException if a measure cannot be evaluated for any package
     * @throws java.util.concurrent.CancellationException if the watch stopped it
     */
    public SweepResult run(Planner planner, Watch watch) {
        Probes probes = new Probes(base, catalog, lists);
        List<Constraint> constraints = constraints(probes);
        List<Objective> objectives = aims.stream()
                .map(aim -> aim.objective(probes.of(aim.measure())))
                .toList();
        Query query = query(constraints, objectives, best);
        expect(probes, constraints, planner, watch);
        Selection selection = planner.select(query, watch);
        List<SweepResult.Row> rows = new ArrayList<>();
        double first =
                selection.best().isEmpty() ? 0.0 : selection.best().get(0).score();
        for (Pick pick : selection.best()) {
            rows.add(row(probes, pick, Math.exp(pick.score() - first) - 1.0));
        }
        List<SweepResult.Alone> alone = new ArrayList<>();
        Conflict conflict = Conflict.none();
        if (selection.passing() == 0) {
            for (int i = 0; i < wishes.size(); i++) {
                Query single = query(List.of(constraints.get(i)), List.of(), 0);
                alone.add(new SweepResult.Alone(
                        wishes.get(i), planner.select(single, watch).passing()));
            }
            conflict = Conflict.of(wishes, constraints, query.counting(), planner, watch);
        }
        return new SweepResult(this, selection.combinations(), selection.passing(), rows, alone, conflict);
    }

    /** Says how long a sweep will take that has to ask for every package which the other wishes leave. */
    private void expect(Probes probes, List<Constraint> constraints, Planner planner, Watch watch) {
        double seconds = probes.askedSeconds();
        if (seconds > 0.0) {
            List<Constraint> declared = constraints.stream()
                    .filter(constraint -> !(constraint.figure() instanceof Visited))
                    .toList();
            long left = planner.select(query(declared, List.of(), 0), watch).passing();
            watch.expect(seconds * left / planner.threads());
            if (watch.isCanceled()) {
                throw new CancellationException();
            }
        }
    }

    /**
     * Finds the packages that no other one equals or betters in every aim at once.
     *
     * @param planner searches
     * @param watch looks on
     * @return the front, by the first aim
     * @throws drivetrain.refusal.RefusedException if a measure cannot be evaluated or is no product of what the parts add
     */
    public List<SweepResult.Row> front(Planner planner, Watch watch) {
        Probes probes = new Probes(base, catalog, lists);
        List<Objective> objectives = aims.stream()
                .map(aim -> aim.objective(probes.of(aim.measure())))
                .toList();
        List<SweepResult.Row> rows = new ArrayList<>();
        for (Pick pick : planner.front(query(constraints(probes), objectives, 1), watch)) {
            rows.add(row(probes, pick, 0.0));
        }
        return rows;
    }

    private List<Constraint> constraints(Probes probes) {
        return wishes.stream()
                .map(wish -> Constraint.between(probes.of(wish.measure()), wish.least(), wish.greatest()))
                .toList();
    }

    private Query query(List<Constraint> constraints, List<Objective> objectives, int rows) {
        List<Integer> sizes = lists.stream().map(list -> list.choices().size()).toList();
        return new Query(sizes, constraints, objectives, rows);
    }

    private SweepResult.Row row(Probes probes, Pick pick, double behind) {
        int[] choice = pick.choice().stream().mapToInt(Integer::intValue).toArray();
        Combination combination = probes.combination(choice);
        List<String> parts = new ArrayList<>();
        for (int d = 0; d < choice.length; d++) {
            parts.add(lists.get(d).choices().get(choice[d]));
        }
        List<Outcome<Double>> numbers =
                measures().stream().map(measure -> measure.of(combination)).toList();
        return new SweepResult.Row(parts, combination, numbers, behind);
    }

    /**
     * Lists the measures that are shown.
     *
     * @return those of the aims, then those of the wishes, each once
     */
    public List<Measure> measures() {
        List<Measure> measures = new ArrayList<>();
        aims.forEach(aim -> add(measures, aim.measure()));
        wishes.forEach(wish -> add(measures, wish.measure()));
        return measures;
    }

    private static void add(List<Measure> measures, Measure measure) {
        if (measures.stream().noneMatch(known -> known.key().equals(measure.key()))) {
            measures.add(measure);
        }
    }
}
