package drivetrain.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Finds the combinations that no other one beats in every objective at once.
 *
 * <p>Figures that agree to nine digits count as equal. A block is left out when a combination that was found is at least as good as the best that the
 * block could hold, objective by objective, and better in one.
 */
final class FrontSearch {

    private static final double STEPS = 1e9;
    private static final double ROUNDING = 1e-12;

    private final Terms terms;
    private final Loops loops;
    private final int depths;
    private final List<Axis> byDimension;
    private final Prospect prospect;
    private final Spread spread;
    private final List<Objective> objectives;
    private final Form[] form;
    private final double[][] fixed;
    private final int[] positions;
    private final int[] choice;
    private final int[] nothing;
    private final Pulse pulse;
    private final List<Point> front = new ArrayList<>();

    /** A combination of the front with the steps of its objectives. */
    private static final class Point {
        final long[] steps;
        final int[] choice;

        Point(long[] steps, int[] choice) {
            this.steps = steps;
            this.choice = choice;
        }
    }

    FrontSearch(
            Query query,
            Terms terms,
            List<Axis> axes,
            Counter counter,
            List<Axis> counted,
            BooleanSupplier isCanceled) {
        this.terms = terms;
        this.byDimension = axes;
        this.prospect = new Prospect(counter, counted);
        objectives = query.objectives();
        form = objectives.stream()
                .map(objective -> terms.formOf(objective.figure()))
                .toArray(Form[]::new);
        List<Axis> ordered = new ArrayList<>();
        axes.stream().filter(this::depends).sorted(Axis.BY_SIZE).forEach(ordered::add);
        depths = ordered.size();
        axes.stream().filter(axis -> !depends(axis)).forEach(ordered::add);
        loops = new Loops(ordered, ordered.size(), terms.width());
        fixed = new double[depths + 1][terms.width()];
        fixed[0] = terms.start();
        positions = new int[axes.size()];
        Arrays.fill(positions, -1);
        choice = new int[axes.size()];
        nothing = new int[axes.size()];
        Arrays.fill(nothing, -1);
        spread = new Spread(axes, start -> prospect.of(start, positions, choice));
        pulse = new Pulse(isCanceled);
    }

    private boolean depends(Axis axis) {
        for (Form each : form) {
            if (axis.moves(each)) {
                return true;
            }
        }
        return false;
    }

    List<Pick> run() {
        int open = terms.judge(terms.all(), fixed[0], loops.restLow[0], loops.restHigh[0]);
        if (open >= 0) {
            enter(0, open);
        }
        front.sort((one, other) -> Arrays.compare(one.steps, other.steps));
        return front.stream().map(point -> Pick.of(point.choice, 0.0)).toList();
    }

    private void enter(int depth, int open) {
        if (depth == depths) {
            take();
        } else {
            descend(depth, open, 0);
        }
    }

    private void descend(int depth, int open, int node) {
        pulse.beat();
        Axis axis = loops.axes[depth];
        int left = terms.judge(open, fixed[depth], axis, node, loops.restLow[depth + 1], loops.restHigh[depth + 1]);
        if (left < 0 || isBeaten(leastSteps(depth, axis, node))) {
            return;
        }
        if (axis.isLeaf(node)) {
            axis.add(fixed[depth], axis.from[node], fixed[depth + 1]);
            positions[axis.dimension] = axis.from[node];
            enter(depth + 1, left);
        } else {
            descend(depth, left, axis.left[node]);
            descend(depth, left, axis.right[node]);
        }
    }

    private long[] leastSteps(int depth, Axis axis, int node) {
        long[] steps = new long[form.length];
        int offset = node * axis.width;
        for (int k = 0; k < form.length; k++) {
            double low = form[k].sum(fixed[depth], axis.least, offset, loops.restLow[depth + 1]);
            double high = form[k].sum(fixed[depth], axis.greatest, offset, loops.restHigh[depth + 1]);
            steps[k] = Math.round((objectives.get(k).leastScore(low, high) - ROUNDING) * STEPS);
        }
        return steps;
    }

    private boolean isBeaten(long[] steps) {
        for (int i = front.size() - 1; i >= 0; i--) {
            if (beats(front.get(i).steps, steps)) {
                return true;
            }
        }
        return false;
    }

    private static boolean beats(long[] one, long[] other) {
        boolean isBetter = false;
        for (int k = 0; k < one.length; k++) {
            if (one[k] > other[k]) {
                return false;
            }
            isBetter |= one[k] < other[k];
        }
        return isBetter;
    }

    /** The steps by which combinations are compared. */
    private static long[] steps(List<Objective> objectives, int[] choice) {
        return objectives.stream()
                .mapToLong(objective ->
                        Math.round(objective.score(objective.figure().at(choice)) * STEPS))
                .toArray();
    }

    private void take() {
        for (Axis axis : byDimension) {
            choice[axis.dimension] = axis.members[Math.max(0, positions[axis.dimension])][0];
        }
        long[] steps = steps(objectives, choice);
        if (isBeaten(steps)) {
            return;
        }
        if (prospect.of(nothing, positions, choice)) {
            spread.run(positions, 1, combination -> add(new Point(steps, combination.clone())));
        }
    }

    private boolean add(Point point) {
        for (Point known : front) {
            if (Arrays.equals(known.steps, point.steps) && Arrays.compare(known.choice, point.choice) < 0) {
                return false;
            }
        }
        front.removeIf(known -> Arrays.equals(known.steps, point.steps) || beats(point.steps, known.steps));
        front.add(point);
        return true;
    }
}
