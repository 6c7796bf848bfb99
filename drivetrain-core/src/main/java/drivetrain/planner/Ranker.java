package drivetrain.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Finds the best combinations by declared objectives, without visiting the others. Not to be shared between threads.
 *
 * <p>Only the axes that change the score are run through, the better half of each first; a block whose least score is above the worst of the best so far
 * is left out, and so is one that fails a constraint. What is found there has one score, whatever is chosen on the other axes: of those choices the first
 * ones that pass are taken, in their order.
 */
final class Ranker {

    private final Query query;
    private final Terms terms;
    private final ScoreBound bound;
    private final double slack;
    private final Loops loops;
    private final int depths;
    private final List<Axis> byDimension;
    private final double[][] fixed;
    private final int[] positions;
    private final int[] choice;
    private final int[] nothing;
    private final Prospect prospect;
    private final Spread spread;
    private final BestList best;
    private final int[][] order;
    private final Pulse pulse;

    Ranker(
            Query query,
            Terms terms,
            List<Axis> axes,
            Counter counter,
            List<Axis> counted,
            BestList best,
            BooleanSupplier isCanceled) {
        this.query = query;
        this.terms = terms;
        this.byDimension = axes;
        this.prospect = new Prospect(counter, counted);
        this.best = best;
        bound = new ScoreBound(terms);
        slack = bound.slack();
        List<Axis> ordered = new ArrayList<>();
        axes.stream().filter(bound::depends).sorted(Axis.BY_SIZE).forEach(ordered::add);
        depths = ordered.size();
        axes.stream().filter(axis -> !bound.depends(axis)).forEach(ordered::add);
        loops = new Loops(ordered, ordered.size(), terms.width());
        fixed = new double[depths + 1][terms.width()];
        fixed[0] = terms.start();
        positions = new int[axes.size()];
        Arrays.fill(positions, -1);
        choice = new int[axes.size()];
        nothing = new int[axes.size()];
        Arrays.fill(nothing, -1);
        spread = new Spread(axes, start -> prospect.of(start, positions, choice));
        order = new int[depths][];
        for (int d = 0; d < depths; d++) {
            order[d] = bestFirst(ordered.get(d));
        }
        pulse = new Pulse(isCanceled);
    }

    private int[] bestFirst(Axis axis) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < axis.size(); i++) {
            all.add(i);
        }
        double[] score = axis.addend[bound.index()];
        all.sort(Comparator.comparingDouble(i -> score[i]));
        return all.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Cuts the work into tasks for some threads. */
    Prefixes prefixes(int threads) {
        return Prefixes.ofSearch(loops.axes, depths, threads);
    }

    /** Ranks what lies below a prefix. */
    void rankBelow(int[] prefix) {
        int open = terms.judge(terms.all(), fixed[0], loops.restLow[0], loops.restHigh[0]);
        for (int d = 0; d < prefix.length && open >= 0; d++) {
            fix(d, order[d][prefix[d]]);
            open = terms.judge(open, fixed[d + 1], loops.restLow[d + 1], loops.restHigh[d + 1]);
        }
        if (open >= 0) {
            enter(prefix.length, open);
        }
    }

    private void fix(int depth, int position) {
        Axis axis = loops.axes[depth];
        axis.add(fixed[depth], position, fixed[depth + 1]);
        positions[axis.dimension] = position;
    }

    private void enter(int depth, int open) {
        if (depth == depths) {
            take();
        } else if (boundOf(depth, 0) <= best.worst() + slack) {
            descend(depth, open, 0);
        }
    }

    private double boundOf(int depth, int node) {
        return bound.of(fixed[depth], loops.axes[depth], node, loops.restLow[depth + 1], loops.restHigh[depth + 1]);
    }

    private void descend(int depth, int open, int node) {
        pulse.beat();
        Axis axis = loops.axes[depth];
        int left = terms.judge(open, fixed[depth], axis, node, loops.restLow[depth + 1], loops.restHigh[depth + 1]);
        if (left < 0) {
            return;
        }
        if (axis.isLeaf(node)) {
            fix(depth, axis.from[node]);
            enter(depth + 1, left);
            return;
        }
        int first = axis.left[node];
        int second = axis.right[node];
        double boundOfFirst = boundOf(depth, first);
        double boundOfSecond = boundOf(depth, second);
        if (boundOfSecond < boundOfFirst) {
            descendIfBetter(depth, left, second, boundOfSecond);
            descendIfBetter(depth, left, first, boundOfFirst);
        } else {
            descendIfBetter(depth, left, first, boundOfFirst);
            descendIfBetter(depth, left, second, boundOfSecond);
        }
    }

    private void descendIfBetter(int depth, int open, int node, double boundOfNode) {
        if (boundOfNode <= best.worst() + slack) {
            descend(depth, open, node);
        }
    }

    /** Every axis that changes the score is fixed. */
    private void take() {
        for (Axis axis : byDimension) {
            choice[axis.dimension] = axis.members[Math.max(0, positions[axis.dimension])][0];
        }
        double score = 0.0;
        for (Objective objective : query.objectives()) {
            score += objective.score(objective.figure().at(choice));
        }
        if (Double.isNaN(score) || score > best.worst()) {
            return;
        }
        if (prospect.of(nothing, positions, choice)) {
            double found = score;
            spread.run(positions, best.most(), combination -> best.offer(combination, found));
        }
    }
}
