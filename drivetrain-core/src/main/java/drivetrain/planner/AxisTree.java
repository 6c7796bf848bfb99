package drivetrain.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Orders the positions of an axis by halving it along whichever addend is spread widest, and keeps the extremes of each half. */
final class AxisTree {

    private final List<Axis.Group> ordered;
    private final int width;
    private final boolean sorted;
    private final int[] from;
    private final int[] to;
    private final int[] left;
    private final int[] right;
    private final double[] least;
    private final double[] greatest;
    private int nodes;

    AxisTree(List<Axis.Group> groups, int width) {
        this.ordered = new ArrayList<>(groups);
        this.width = width;
        int most = Math.max(1, 2 * groups.size() - 1);
        from = new int[most];
        to = new int[most];
        left = new int[most];
        right = new int[most];
        least = new double[most * width];
        greatest = new double[most * width];
        if (!groups.isEmpty()) {
            sort(ordered, widest(0, groups.size()));
            sorted = isSorted();
            build(0, groups.size());
        } else {
            sorted = true;
        }
    }

    private boolean isSorted() {
        for (int t = 0; t < width; t++) {
            boolean rises = false;
            boolean falls = false;
            for (int i = 1; i < ordered.size(); i++) {
                double step = ordered.get(i).addends[t] - ordered.get(i - 1).addends[t];
                rises |= step > 0.0;
                falls |= step < 0.0;
            }
            if (rises && falls) {
                return false;
            }
        }
        return true;
    }

    private static void sort(List<Axis.Group> groups, int term) {
        if (term >= 0) {
            groups.sort(Comparator.comparingDouble(group -> group.addends[term]));
        }
    }

    private int build(int start, int end) {
        int node = nodes++;
        from[node] = start;
        to[node] = end;
        for (int t = 0; t < width; t++) {
            double low = ordered.get(start).addends[t];
            double high = low;
            for (int i = sorted ? end - 1 : start + 1; i < end; i++) { // the extremes of a sorted run are its ends
                low = Math.min(low, ordered.get(i).addends[t]);
                high = Math.max(high, ordered.get(i).addends[t]);
            }
            least[node * width + t] = low;
            greatest[node * width + t] = high;
        }
        if (end - start > 1) {
            if (!sorted) {
                sort(ordered.subList(start, end), widest(start, end));
            }
            int middle = (start + end) >>> 1;
            left[node] = build(start, middle);
            right[node] = build(middle, end);
        }
        return node;
    }

    private int widest(int start, int end) {
        int widest = -1;
        double spread = 0.0;
        for (int t = 0; t < width; t++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = start; i < end; i++) {
                low = Math.min(low, ordered.get(i).addends[t]);
                high = Math.max(high, ordered.get(i).addends[t]);
            }
            if (high - low > spread) {
                spread = high - low;
                widest = t;
            }
        }
        return widest;
    }

    List<Axis.Group> ordered() {
        return ordered;
    }

    int[] from() {
        return from;
    }

    int[] to() {
        return to;
    }

    int[] left() {
        return left;
    }

    int[] right() {
        return right;
    }

    double[] least() {
        return least;
    }

    double[] greatest() {
        return greatest;
    }
}
