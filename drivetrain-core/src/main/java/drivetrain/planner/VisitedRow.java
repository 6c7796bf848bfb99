package drivetrain.planner;

import java.util.Arrays;

/**
 * A visited figure along the last axis: its columns as rows of numbers, those of the other dimensions filled with their one number, and the interval that
 * all constraints on it leave. A figure of which a score is wanted must be finite and above zero.
 */
final class VisitedRow {

    private final RowFormula formula;
    private final Column[] column;
    private final boolean[] runs;
    private final double[][] numbers;
    private final double[] values;
    private final double low;
    private final double high;

    private VisitedRow(Visited figure, Axis axis, double low, double high) {
        this.low = low;
        this.high = high;
        formula = figure.formula();
        column = figure.columns().toArray(Column[]::new);
        runs = new boolean[column.length];
        numbers = new double[column.length][axis.size()];
        values = new double[axis.size()];
        for (int k = 0; k < column.length; k++) {
            runs[k] = column[k].dimension() == axis.dimension;
            for (int i = 0; i < axis.size(); i++) {
                numbers[k][i] = runs[k] ? column[k].value(axis.members[i][0]) : Double.NaN;
            }
        }
    }

    static VisitedRow of(Visited figure, Query query, Axis axis) {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (Constraint constraint : query.constraints()) {
            if (constraint.figure().equals(figure)) {
                low = Math.max(low, constraint.low());
                high = Math.min(high, constraint.high());
            }
        }
        for (Objective objective : query.objectives()) {
            if (objective.figure().equals(figure)) {
                low = Math.max(low, Double.MIN_VALUE);
                high = Math.min(high, Double.MAX_VALUE);
            }
        }
        return new VisitedRow(figure, axis, low, high);
    }

    /** Begins a row. */
    void enter(int[] choice) {
        for (int k = 0; k < column.length; k++) {
            if (!runs[k]) {
                double number = column[k].value(choice[column[k].dimension()]);
                if (Double.doubleToRawLongBits(numbers[k][0]) != Double.doubleToRawLongBits(number)) {
                    Arrays.fill(numbers[k], number);
                }
            }
        }
    }

    /**
     * Works a part of the row out and keeps the weights of what passes.
     *
     * @return the sum of the weights that are kept
     */
    long keep(int from, int to, int[] weights, int[] kept) {
        formula.fill(numbers, from, to, values);
        int sum = 0;
        for (int i = from; i < to; i++) {
            double value = values[i];
            int weight = value >= low && value <= high ? weights[i] : 0;
            kept[i] = weight;
            sum += weight;
        }
        return sum;
    }

    /** Returns what was worked out last. */
    double[] values() {
        return values;
    }
}
