package drivetrain.planner;

import drivetrain.refusal.Refusal;

/**
 * What one dimension contributes to a figure: a number for each of its choices.
 *
 * <p>NaN stands for a choice that has no such number. A figure that meets it has no value, and what has no value never passes.
 */
public final class Column {

    private final int dimension;
    private final double[] values;

    private Column(int dimension, double[] values) {
        this.dimension = dimension;
        this.values = values;
    }

    /**
     * Makes a column.
     *
     * @param dimension the index of the dimension, counted from 0
     * @param values a number for each choice, finite or NaN
     * @return the column
     * @throws drivetrain.refusal.RefusedException if there is no choice, if a number is infinite or if the dimension is below zero
     */
    public static Column of(int dimension, double... values) {
        if (dimension < 0 || values.length == 0) {
            throw Refusal.of("column", dimension + " with " + values.length + " choices", "is no column")
                    .allowing("a dimension from 0 with at least one choice")
                    .asException();
        }
        for (double value : values) {
            if (Double.isInfinite(value)) {
                throw Refusal.of("column", Double.toString(value), "is not a finite number")
                        .allowing("finite numbers, or NaN where there is none")
                        .asException();
            }
        }
        return new Column(dimension, values.clone());
    }

    /**
     * Makes a column that holds the index of each choice, for a formula that looks its choices up itself.
     *
     * @param dimension the index of the dimension
     * @param size the count of choices
     * @return the column 0, 1, 2 ...
     * @throws drivetrain.refusal.RefusedException if there is no choice or if the dimension is below zero
     */
    public static Column ofIndices(int dimension, int size) {
        double[] indices = new double[Math.max(0, size)];
        for (int i = 0; i < indices.length; i++) {
            indices[i] = i;
        }
        return of(dimension, indices);
    }

    /**
     * Returns the dimension.
     *
     * @return its index, counted from 0
     */
    public int dimension() {
        return dimension;
    }

    /**
     * Returns the count of choices.
     *
     * @return at least 1
     */
    public int size() {
        return values.length;
    }

    /**
     * Returns the number of a choice.
     *
     * @param choice the index of the choice
     * @return a finite number, or NaN
     */
    public double value(int choice) {
        return values[choice];
    }
}
