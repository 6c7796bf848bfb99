package drivetrain.planner;

import java.util.List;

/**
 * A figure about which nothing is known but its columns: it is worked out for every combination that the other constraints leave.
 *
 * @param columns the columns that the formula takes
 * @param formula the formula
 */
public record Visited(List<Column> columns, RowFormula formula) implements Figure {

    /** Copies the list. */
    public Visited {
        columns = List.copyOf(columns);
    }

    /**
     * Makes a visited figure.
     *
     * @param formula the formula
     * @param columns the columns that it takes, in this order
     * @return the figure
     */
    public static Visited of(RowFormula formula, Column... columns) {
        return new Visited(List.of(columns), formula);
    }

    @Override
    public double at(int[] choice) {
        double[][] row = new double[columns.size()][];
        for (int k = 0; k < row.length; k++) {
            Column column = columns.get(k);
            row[k] = new double[] {column.value(choice[column.dimension()])};
        }
        double[] out = new double[1];
        formula.fill(row, 0, 1, out);
        return out[0];
    }
}
