package drivetrain.planner;

import java.util.Arrays;

/**
 * The positions of a sorted axis at which every open constraint holds, for given choices of all other dimensions: an interval, found by searching the
 * sorted columns for the limits. The search starts where the last one ended, which is near.
 *
 * <p>Between what certainly passes and what certainly fails lies what is nearer to a limit than the slack: the interval that possibly passes is the
 * wider one, and the caller works out what lies in it and not in the certain one.
 */
final class SortedRow {

    private static final int STEPS = 6;

    private final Terms terms;
    private final int size;
    private final int[] sign;
    private final double[][][] rising;
    private final int[] lowHint;
    private final int[] highHint;

    int possibleFrom;
    int possibleTo;
    int certainFrom;
    int certainTo;

    SortedRow(Axis axis, Terms terms) {
        this.terms = terms;
        this.size = axis.size();
        int count = terms.form.length;
        sign = new int[count];
        lowHint = new int[count];
        highHint = new int[count];
        rising = new double[count][][];
        for (int c = 0; c < count; c++) {
            Form form = terms.form[c];
            sign[c] = axis.direction(form) == -1 ? -1 : 1;
            rising[c] = new double[form.to() - form.from()][];
            for (int k = 0; k < rising[c].length; k++) {
                double[] addend = axis.addend[form.from() + k];
                rising[c][k] = sign[c] > 0
                        ? addend
                        : Arrays.stream(addend).map(number -> -number).toArray();
            }
        }
        Arrays.fill(highHint, size);
    }

    /** Tells whether every figure that a constraint is about rises, falls or stays along the axis. */
    static boolean fits(Axis axis, Terms terms) {
        for (Form form : terms.form) {
            if (axis.direction(form) == 2) {
                return false;
            }
        }
        return true;
    }

    /** Finds the intervals. */
    void find(int open, double[] fixed) {
        possibleFrom = 0;
        possibleTo = size;
        certainFrom = 0;
        certainTo = size;
        for (int bits = open; bits != 0 && possibleFrom < possibleTo; bits &= bits - 1) {
            int c = Integer.numberOfTrailingZeros(bits);
            double low = sign[c] > 0 ? terms.low[c] : -terms.high[c];
            double high = sign[c] > 0 ? terms.high[c] : -terms.low[c];
            if (low > Double.NEGATIVE_INFINITY) {
                int from = first(c, low - Terms.SLACK, lowHint[c], fixed);
                lowHint[c] = from;
                possibleFrom = Math.max(possibleFrom, from);
                while (from < size && at(c, from, fixed) < low + Terms.SLACK) {
                    from++;
                }
                certainFrom = Math.max(certainFrom, from);
            }
            if (high < Double.POSITIVE_INFINITY) {
                int to = first(c, high + Terms.SLACK, highHint[c], fixed);
                highHint[c] = to;
                possibleTo = Math.min(possibleTo, to);
                while (to > 0 && at(c, to - 1, fixed) > high - Terms.SLACK) {
                    to--;
                }
                certainTo = Math.min(certainTo, to);
            }
        }
    }

    /** The figure of a constraint at a position, its sign changed where it falls along the axis. */
    private double at(int c, int position, double[] fixed) {
        Form form = terms.form[c];
        boolean least = form.least() == (sign[c] > 0);
        double extreme = sign[c] * fixed[form.from()] + rising[c][0][position];
        for (int k = 1; k < rising[c].length; k++) {
            double other = sign[c] * fixed[form.from() + k] + rising[c][k][position];
            extreme = least ? Math.min(extreme, other) : Math.max(extreme, other);
        }
        return extreme;
    }

    /** The first position whose figure is not below a limit. */
    private int first(int c, double limit, int hint, double[] fixed) {
        Form form = terms.form[c];
        if (form.isSingle()) {
            return first(rising[c][0], limit - sign[c] * fixed[form.from()], hint);
        }
        int low = 0;
        int high = size;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (at(c, middle, fixed) < limit) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static int first(double[] numbers, double limit, int hint) {
        int at = hint;
        for (int step = 0; step < STEPS; step++) {
            if (at < numbers.length && numbers[at] < limit) {
                at++;
            } else if (at > 0 && numbers[at - 1] >= limit) {
                at--;
            } else {
                return at;
            }
        }
        int low = at;
        int high = numbers.length;
        if (at > 0 && numbers[at - 1] >= limit) {
            low = 0;
            high = at - 1;
        }
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (numbers[middle] < limit) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
