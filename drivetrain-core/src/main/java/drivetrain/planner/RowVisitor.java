package drivetrain.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Visits the combinations that the declared constraints leave, where a figure says nothing about itself. Not to be shared between threads.
 *
 * <p>All axes but the last are run through with their trees, so that blocks which fail a declared constraint are left out early; on the last axis declared
 * constraints give an interval, and there the formula works out a whole row in one plain loop.
 */
final class RowVisitor {

    private final Terms terms;
    private final Loops loops;
    private final int last;
    private final boolean lastIsSorted;
    private final SortedRow row;
    private final double[][] fixed;
    private final int[] positions;
    private final int[] choice;
    private final RowCount count;
    private final Pulse pulse;
    private final boolean isSlow;

    RowVisitor(Query query, Terms terms, List<Axis> axes, BestList best, BooleanSupplier isCanceled) {
        this.terms = terms;
        List<Axis> ordered = new ArrayList<>(axes);
        ordered.sort(Axis.BY_SIZE);
        last = ordered.size() - 1;
        positions = new int[axes.size()];
        choice = new int[axes.size()];
        loops = new Loops(ordered, ordered.size(), terms.width());
        lastIsSorted = SortedRow.fits(ordered.get(last), terms);
        row = new SortedRow(ordered.get(last), terms);
        fixed = new double[ordered.size()][terms.width()];
        fixed[0] = terms.start();
        count = new RowCount(query, terms, axes, ordered.get(last), best, positions, choice);
        pulse = new Pulse(isCanceled);
        isSlow = query.figures().stream()
                .anyMatch(figure ->
                        figure instanceof Visited visited && visited.formula().isSlow());
    }

    /** Cuts the work into tasks for some threads. */
    Prefixes prefixes(int threads) {
        return Prefixes.ofVisit(loops.axes, last, threads);
    }

    /** Counts what lies below a prefix, and ranks it. */
    long countBelow(int[] prefix) {
        long weight = 1;
        int open = terms.judge(terms.all(), fixed[0], loops.restLow[0], loops.restHigh[0]);
        for (int d = 0; d < prefix.length && open >= 0; d++) {
            fix(d, prefix[d]);
            weight *= loops.axes[d].members[prefix[d]].length;
            open = terms.judge(open, fixed[d + 1], loops.restLow[d + 1], loops.restHigh[d + 1]);
        }
        return open < 0 ? 0 : weight * visit(prefix.length, open);
    }

    private void fix(int depth, int position) {
        Axis axis = loops.axes[depth];
        axis.add(fixed[depth], position, fixed[depth + 1]);
        positions[axis.dimension] = position;
        choice[axis.dimension] = axis.members[position][0];
    }

    private long visit(int depth, int open) {
        return depth == last ? visitRow(open) : descend(depth, open, 0);
    }

    private long descend(int depth, int open, int node) {
        Axis axis = loops.axes[depth];
        int left = terms.judge(open, fixed[depth], axis, node, loops.restLow[depth + 1], loops.restHigh[depth + 1]);
        if (left < 0) {
            return 0;
        }
        if (axis.isLeaf(node)) {
            fix(depth, axis.from[node]);
            return axis.weight(node) * visit(depth + 1, left);
        }
        return descend(depth, left, axis.left[node]) + descend(depth, left, axis.right[node]);
    }

    private long visitRow(int open) {
        pulse.beat();
        Axis axis = loops.axes[last];
        count.enter(fixed[last]);
        if (lastIsSorted) {
            row.find(open, fixed[last]);
            if (row.certainFrom < row.certainTo) {
                return run(row.certainFrom, row.certainTo)
                        + workOut(axis, open, row.possibleFrom, row.certainFrom)
                        + workOut(axis, open, row.certainTo, row.possibleTo);
            }
            return workOut(axis, open, row.possibleFrom, row.possibleTo);
        }
        return open == 0 ? run(0, axis.size()) : workOut(axis, open, 0, axis.size());
    }

    /** A slow formula is worked out for one combination at a time, so that it can be given up between two. */
    private long run(int from, int to) {
        if (!isSlow) {
            return count.run(from, to);
        }
        long passing = 0;
        for (int i = from; i < to; i++) {
            pulse.ask();
            passing += count.run(i, i + 1);
        }
        return passing;
    }

    private long workOut(Axis axis, int open, int from, int to) {
        long passing = 0;
        for (int i = from; i < to; i++) {
            choice[axis.dimension] = axis.members[i][0];
            if (terms.passes(open, choice)) {
                passing += run(i, i + 1);
            }
        }
        return passing;
    }
}
