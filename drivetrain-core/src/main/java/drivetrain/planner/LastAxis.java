package drivetrain.planner;

/**
 * The sorted axis that all others enclose: which interval of it is left at each depth.
 *
 * <p>Without such an axis there is one position of weight 1 that adds nothing.
 */
final class LastAxis {

    private final Axis axis;
    private final boolean isThere;
    private final Terms terms;
    private final SortedRow row;
    private final int[] choice;
    private final int[] from;
    private final int[] to;

    private LastAxis(Axis axis, boolean isThere, Terms terms, int[] choice, int depths) {
        this.axis = axis;
        this.isThere = isThere;
        this.terms = terms;
        this.choice = choice;
        row = new SortedRow(axis, terms);
        from = new int[depths + 1];
        to = new int[depths + 1];
    }

    static LastAxis of(Axis axis, Terms terms, int[] choice, int depths) {
        return new LastAxis(axis, true, terms, choice, depths);
    }

    static LastAxis none(Terms terms, int[] choice, int depths) {
        return new LastAxis(Axis.single(terms), false, terms, choice, depths);
    }

    /** Begins with the whole axis, or with one position of it. */
    void begin(int only) {
        from[0] = Math.max(0, only);
        to[0] = only < 0 ? axis.size() : only + 1;
    }

    /** Begins a depth with what is left at the one before. */
    void inherit(int depth) {
        from[depth] = from[depth - 1];
        to[depth] = to[depth - 1];
    }

    /**
     * Narrows the interval by constraints whose other choices are all made.
     *
     * @return those of them that are settled by it; one that is not must be worked out in the end
     */
    int settle(int depth, int constraints, double[] fixed) {
        row.find(constraints, fixed);
        int start = Math.max(from[depth], row.possibleFrom);
        int end = Math.min(to[depth], row.possibleTo);
        int certainStart = Math.min(end, Math.max(start, row.certainFrom));
        int certainEnd = Math.max(certainStart, Math.min(end, row.certainTo));
        int doubtful = certainStart - start + end - certainEnd;
        if (doubtful == 0) {
            from[depth] = start;
            to[depth] = end;
            return constraints;
        }
        return settleNearly(depth, constraints, start, end, certainStart, certainEnd);
    }

    /** What is nearer to a limit than the slack is worked out; the outcome is an interval unless rounding tears it. */
    private int settleNearly(int depth, int constraints, int start, int end, int certainStart, int certainEnd) {
        int first = start;
        while (first < end && !isIn(first, certainStart, certainEnd) && !passes(constraints, first)) {
            first++;
        }
        int behind = end;
        while (behind > first && !isIn(behind - 1, certainStart, certainEnd) && !passes(constraints, behind - 1)) {
            behind--;
        }
        from[depth] = first;
        to[depth] = behind;
        for (int i = first; i < behind; i++) {
            if (!isIn(i, certainStart, certainEnd) && !passes(constraints, i)) {
                return 0;
            }
        }
        return constraints;
    }

    private static boolean isIn(int position, int from, int to) {
        return position >= from && position < to;
    }

    private boolean passes(int constraints, int position) {
        if (isThere) {
            choice[axis.dimension] = axis.members[position][0];
        }
        return terms.passes(constraints, choice);
    }

    boolean isEmpty(int depth) {
        return from[depth] >= to[depth];
    }

    long weight(int depth) {
        return axis.before[to[depth]] - axis.before[from[depth]];
    }

    double low(int depth, int term) {
        return Math.min(axis.addend[term][from[depth]], axis.addend[term][to[depth] - 1]);
    }

    double high(int depth, int term) {
        return Math.max(axis.addend[term][from[depth]], axis.addend[term][to[depth] - 1]);
    }

    /** Counts what passes constraints that are still open when every other choice is made. */
    long workOut(int depth, int constraints) {
        long count = 0;
        for (int i = from[depth]; i < to[depth]; i++) {
            if (passes(constraints, i)) {
                count += axis.before[i + 1] - axis.before[i];
            }
        }
        return count;
    }
}
