package drivetrain.planner;

import java.util.List;

/** Works a row of combinations out by the formulas that had to be visited: counts those that pass, and offers the good ones. */
final class RowCount {

    private final Query query;
    private final Axis axis;
    private final BestList best;
    private final int[] positions;
    private final int[] choice;
    private final Spread spread;
    private final ScoreBound bound;
    private final double slack;
    private final VisitedRow[] rows;
    private final List<Objective> objectives;
    private final VisitedRow[] wished;
    private final int[] passing;
    private final int[] weight;
    private double[] sums = new double[0];

    RowCount(Query query, Terms terms, List<Axis> axes, Axis axis, BestList best, int[] positions, int[] choice) {
        this.query = query;
        this.axis = axis;
        this.best = best;
        this.positions = positions;
        this.choice = choice;
        spread = new Spread(axes, start -> true);
        bound = new ScoreBound(terms);
        slack = bound.slack()
                + Terms.SLACK
                        * query.objectives().stream()
                                .mapToDouble(Objective::weight)
                                .sum();
        List<Visited> figures = query.figures().stream()
                .filter(Visited.class::isInstance)
                .map(Visited.class::cast)
                .distinct()
                .toList();
        rows = figures.stream()
                .map(figure -> VisitedRow.of(figure, query, axis))
                .toArray(VisitedRow[]::new);
        objectives = query.objectives().stream()
                .filter(objective -> objective.figure() instanceof Visited)
                .toList();
        wished = objectives.stream()
                .map(objective -> rows[figures.indexOf((Visited) objective.figure())])
                .toArray(VisitedRow[]::new);
        passing = new int[axis.size()];
        weight = new int[axis.size()];
        for (int i = 0; i < weight.length; i++) {
            weight[i] = axis.members[i].length;
        }
    }

    /** Begins a row: every other dimension is chosen. */
    void enter(double[] fixed) {
        sums = fixed;
        for (VisitedRow row : rows) {
            row.enter(choice);
        }
    }

    /** Counts a part of the row. */
    long run(int from, int to) {
        if (rows.length == 0) {
            System.arraycopy(weight, from, passing, from, to - from);
        }
        long count = rows.length == 0 ? axis.before[to] - axis.before[from] : 0;
        for (int k = 0; k < rows.length; k++) {
            count = rows[k].keep(from, to, k == 0 ? weight : passing, passing);
            if (count == 0) {
                return 0;
            }
        }
        if (best.most() > 0) {
            rank(from, to);
        }
        return count;
    }

    private void rank(int from, int to) {
        double declared = bound.of(sums, axis.least, axis.greatest);
        if (objectives.size() == 1 && objectives.get(0).goal() != Objective.Goal.NEAREST) {
            rankByOne(from, to, declared);
        } else if (!objectives.isEmpty() || declared <= best.worst() + slack) {
            for (int i = from; i < to; i++) {
                if (passing[i] > 0) {
                    consider(i);
                }
            }
        }
    }

    /** Where one visited figure is wished low or high, what can still be among the best lies on one side of a number. */
    private void rankByOne(int from, int to, double declared) {
        double[] values = wished[0].values();
        Objective objective = objectives.get(0);
        double exponent = (best.worst() + slack - declared) / objective.weight();
        boolean isLow = objective.goal() == Objective.Goal.LOWEST;
        double low = isLow ? 0.0 : Math.exp(-exponent) * (1.0 - Terms.SLACK);
        double high = isLow ? Math.exp(exponent) * (1.0 + Terms.SLACK) : Double.POSITIVE_INFINITY;
        for (int i = from; i < to; i++) {
            double value = values[i];
            if (value >= low && value <= high && passing[i] > 0) {
                consider(i);
            }
        }
    }

    private void consider(int position) {
        double least = bound.at(sums, axis, position);
        for (int k = 0; k < wished.length; k++) {
            least += objectives.get(k).score(wished[k].values()[position]);
        }
        if (least > best.worst() + slack) {
            return;
        }
        choice[axis.dimension] = axis.members[position][0];
        double exact = query.score(choice);
        if (exact <= best.worst()) {
            positions[axis.dimension] = position;
            spread.run(positions, best.most(), combination -> best.offer(combination, exact));
        }
    }
}
