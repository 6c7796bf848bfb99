package drivetrain.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One dimension made ready for the search.
 *
 * <p>Choices that no column tells apart are one position with several members. A choice that lacks a number is left out. Positions are ordered so
 * that neighbours are alike, and over them stands a binary tree of which each node knows the least and the greatest of every addend below it. Where
 * one order sorts every column, the positions are in that order.
 */
final class Axis {

    final int dimension;
    final int width;

    /** For each addend its number at each position. */
    final double[][] addend;

    /** For each position the choices that it stands for, rising. */
    final int[][] members;

    /** For each choice its position, or -1 if it is left out. */
    final int[] position;

    /** For each position how many choices stand before it; one more number at the end. */
    final long[] before;

    /** For each term whether a column of it changes along the positions, be it only in the last bit. */
    private final boolean[] changes;

    /** For each addend 1 if it rises along the positions, -1 if it falls, 0 if it stays, 2 if it does neither. */
    final int[] direction;

    /** The tree: node 0 is the root, a leaf has no left child. */
    final int[] from;

    final int[] to;
    final int[] left;
    final int[] right;
    final double[] least;
    final double[] greatest;

    private Axis(int dimension, int choices, Terms terms, List<Group> groups) {
        this.dimension = dimension;
        this.width = terms.width();
        int size = groups.size();
        AxisTree tree = new AxisTree(groups, width);
        List<Group> ordered = tree.ordered();
        addend = new double[width][size];
        members = new int[size][];
        position = new int[choices];
        Arrays.fill(position, -1);
        before = new long[size + 1];
        for (int i = 0; i < size; i++) {
            Group group = ordered.get(i);
            for (int t = 0; t < width; t++) {
                addend[t][i] = group.addends[t];
            }
            members[i] = group.members.stream().mapToInt(Integer::intValue).toArray();
            for (int member : members[i]) {
                position[member] = i;
            }
            before[i + 1] = before[i] + members[i].length;
        }
        direction = new int[width];
        for (int t = 0; t < width; t++) {
            direction[t] = direction(addend[t]);
        }
        changes = new boolean[width];
        for (int t = 0; t < changes.length; t++) {
            changes[t] = changes(terms.columns(t, dimension));
        }
        from = tree.from();
        to = tree.to();
        left = tree.left();
        right = tree.right();
        least = tree.least();
        greatest = tree.greatest();
    }

    /** Choices that no column tells apart. */
    static final class Group {
        final double[] addends;
        final List<Integer> members = new ArrayList<>();

        Group(double[] addends) {
            this.addends = addends;
        }
    }

    /**
     * Makes an axis.
     *
     * @param kept the choices that are not left out beforehand
     * @param needed the columns without whose number a choice is left out
     * @param told the columns that tell choices apart
     */
    static Axis of(int dimension, boolean[] kept, Terms terms, Collection<Column> needed, Collection<Column> told) {
        List<Column> needs = of(dimension, needed);
        List<Column> tells = of(dimension, told);
        Map<List<Double>, Group> groups = new LinkedHashMap<>();
        for (int choice = 0; choice < kept.length; choice++) {
            int at = choice;
            if (kept[at] && needs.stream().noneMatch(column -> Double.isNaN(column.value(at)))) {
                List<Double> key =
                        tells.stream().map(column -> column.value(at)).toList();
                groups.computeIfAbsent(key, none -> new Group(terms.addends(dimension, at)))
                        .members
                        .add(choice);
            }
        }
        return new Axis(dimension, kept.length, terms, List.copyOf(groups.values()));
    }

    /** Makes an axis of one position that adds nothing. */
    static Axis single(Terms terms) {
        Group group = new Group(new double[terms.width()]);
        group.members.add(0);
        return new Axis(Integer.MAX_VALUE, 1, terms, List.of(group));
    }

    private static List<Column> of(int dimension, Collection<Column> columns) {
        return columns.stream()
                .filter(column -> column.dimension() == dimension)
                .distinct()
                .toList();
    }

    private boolean changes(List<Column> columns) {
        for (Column column : columns) {
            for (int[] alike : members) {
                if (column.value(alike[0]) != column.value(members[0][0])) {
                    return true;
                }
            }
        }
        return false;
    }

    private static int direction(double[] numbers) {
        boolean rises = false;
        boolean falls = false;
        for (int i = 1; i < numbers.length; i++) {
            rises |= numbers[i] > numbers[i - 1];
            falls |= numbers[i] < numbers[i - 1];
        }
        return rises && falls ? 2 : rises ? 1 : falls ? -1 : 0;
    }

    int size() {
        return members.length;
    }

    /** Returns how many choices are left. */
    long weight() {
        return before[members.length];
    }

    long weight(int node) {
        return before[to[node]] - before[from[node]];
    }

    boolean isLeaf(int node) {
        return left[node] == 0;
    }

    /** Tells whether a term may change along the axis. */
    boolean changes(int term) {
        return changes[term];
    }

    /** Tells whether a figure may change along the axis. */
    boolean moves(Form form) {
        for (int t = form.from(); t < form.to(); t++) {
            if (changes[t]) {
                return true;
            }
        }
        return false;
    }

    /** Returns 1 or -1 if a figure rises or falls along the positions, 0 if it stays, 2 if it does neither. */
    int direction(Form form) {
        int all = 0;
        for (int t = form.from(); t < form.to(); t++) {
            int one = direction[t];
            if (one == 2 || (all != 0 && one != 0 && one != all)) {
                return 2;
            }
            all = all == 0 ? one : all;
        }
        return all;
    }

    /** Returns the constraints whose figures change along the axis. */
    int moved(Terms terms) {
        int mask = 0;
        for (int c = 0; c < terms.form.length; c++) {
            if (moves(terms.form[c])) {
                mask |= 1 << c;
            }
        }
        return mask;
    }

    /** Adds what a position adds. */
    void add(double[] sums, int at, double[] result) {
        for (int t = 0; t < width; t++) {
            result[t] = sums[t] + addend[t][at];
        }
    }

    static final Comparator<Axis> BY_SIZE =
            Comparator.<Axis>comparingInt(Axis::size).thenComparingInt(axis -> axis.dimension);
}
