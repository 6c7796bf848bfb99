package drivetrain.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Counts the combinations that pass the declared constraints, without visiting them. Not to be shared between threads.
 *
 * <p>The axes are run through one inside the other. On each the tree is descended only as far as a constraint is undecided: a half that fails is left
 * out, and one that passes everything is counted at once with all that lies behind it. The last axis is sorted: as soon as all other choices that a
 * constraint is about are made, the constraint is an interval of it, which narrows what the axes in between are judged by.
 */
final class Counter {

    private final Terms terms;
    private final Loops loops;
    private final int[] moved;
    private final int depths;
    private final LastAxis last;
    private final long multiplier;
    private final double[][] fixed;
    private final double[][] restLow;
    private final double[][] restHigh;
    private final double[] sums;
    private final int[] ready;
    private final int[] choice;
    private final Pulse pulse;
    private long enough = Long.MAX_VALUE;

    Counter(Terms terms, List<Axis> all, BooleanSupplier isCanceled) {
        this.terms = terms;
        List<Axis> used = new ArrayList<>();
        long free = 1;
        double[] start = terms.start();
        choice = new int[all.size()];
        for (Axis axis : all) {
            choice[axis.dimension] = axis.members[0][0];
            if (axis.moved(terms) == 0) {
                free *= axis.weight();
                axis.add(start, 0, start);
            } else {
                used.add(axis);
            }
        }
        multiplier = free;
        List<Axis> ordered = CountOrder.of(used, terms);
        boolean endsSorted = !ordered.isEmpty() && SortedRow.fits(ordered.get(ordered.size() - 1), terms);
        depths = endsSorted ? ordered.size() - 1 : ordered.size();
        loops = new Loops(ordered, depths, terms.width());
        moved = ordered.stream().mapToInt(axis -> axis.moved(terms)).toArray();
        ready = new int[depths + 1];
        last = endsSorted
                ? LastAxis.of(ordered.get(depths), terms, choice, depths)
                : LastAxis.none(terms, choice, depths);
        int later = 0;
        for (int d = depths; d >= 0; d--) {
            ready[d] = (endsSorted ? moved[depths] : 0) & ~later;
            later |= d > 0 ? moved[d - 1] : 0;
        }
        fixed = new double[depths + 1][terms.width()];
        fixed[0] = start;
        sums = new double[terms.width()];
        restLow = new double[depths + 1][terms.width()];
        restHigh = new double[depths + 1][terms.width()];
        pulse = new Pulse(isCanceled);
    }

    /** Cuts the work into tasks for some threads. */
    Prefixes prefixes(int threads) {
        return Prefixes.ofSearch(loops.axes, depths, threads);
    }

    /** Tells whether a combination passes whose choices are restricted to one position on some axes, by dimension. */
    boolean exists(int[] positionOfDimension) {
        loops.restrict(positionOfDimension);
        last.begin(depths < loops.axes.length ? loops.only(depths) : -1);
        enough = 1;
        return enter(0, terms.all()) > 0;
    }

    /** Counts the combinations below a prefix: one position for each of the outermost axes. */
    long countBelow(int[] prefix) {
        long weight = multiplier;
        last.begin(-1);
        int open = narrow(0, terms.all());
        for (int d = 0; d < prefix.length && open >= 0; d++) {
            fix(d, prefix[d]);
            weight *= loops.axes[d].members[prefix[d]].length;
            last.inherit(d + 1);
            open = narrow(d + 1, open);
        }
        return open < 0 ? 0 : weight * count(prefix.length, open);
    }

    private void fix(int depth, int position) {
        Axis axis = loops.axes[depth];
        axis.add(fixed[depth], position, fixed[depth + 1]);
        choice[axis.dimension] = axis.members[position][0];
    }

    private long enter(int depth, int open) {
        if (depth > 0) {
            last.inherit(depth);
        }
        int left = narrow(depth, open);
        return left < 0 ? 0 : count(depth, left);
    }

    /** Settles what has become an interval of the last axis and judges the rest; -1 if nothing passes. */
    private int narrow(int depth, int open) {
        int settled = open & ready[depth];
        int left = settled == 0 ? open : open & ~last.settle(depth, settled, sums(depth));
        if (last.isEmpty(depth)) {
            return -1;
        }
        for (int t = 0; t < restLow[depth].length; t++) {
            restLow[depth][t] = last.low(depth, t);
            restHigh[depth][t] = last.high(depth, t);
        }
        return left;
    }

    /** The sums so far, with those of the axes behind, which are the same for all their positions where a constraint is ready. */
    private double[] sums(int depth) {
        for (int t = 0; t < sums.length; t++) {
            sums[t] = fixed[depth][t] + loops.restLow[depth][t];
        }
        return sums;
    }

    private long count(int depth, int open) {
        if (open == 0) {
            return loops.restWeight[depth] * last.weight(depth);
        }
        if (depth == depths) {
            return last.workOut(depth, open);
        }
        int only = loops.only(depth);
        if (only >= 0) {
            fix(depth, only);
            return enter(depth + 1, open);
        }
        if ((moved[depth] & open) == 0) {
            fix(depth, 0);
            return loops.axes[depth].weight() * enter(depth + 1, open);
        }
        for (int t = 0; t < restLow[depth].length; t++) {
            restLow[depth][t] += loops.restLow[depth + 1][t];
            restHigh[depth][t] += loops.restHigh[depth + 1][t];
        }
        return descend(depth, open, 0);
    }

    private long descend(int depth, int open, int node) {
        Axis axis = loops.axes[depth];
        int left = terms.judge(open, fixed[depth], axis, node, restLow[depth], restHigh[depth]);
        if (left < 0) {
            return 0;
        }
        if (left == 0) {
            return axis.weight(node) * loops.restWeight[depth + 1] * last.weight(depth);
        }
        if (axis.isLeaf(node)
                || !terms.moves(moved[depth] & left, fixed[depth], axis, node, restLow[depth], restHigh[depth])) {
            fix(depth, axis.from[node]);
            return axis.weight(node) * enter(depth + 1, left);
        }
        pulse.beat();
        long count = descend(depth, left, axis.left[node]);
        return count >= enough ? count : count + descend(depth, left, axis.right[node]);
    }
}
