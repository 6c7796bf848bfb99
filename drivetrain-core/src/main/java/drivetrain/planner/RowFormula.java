package drivetrain.planner;

import java.util.function.ToDoubleFunction;

/**
 * A formula of one's own over columns, worked out for a row of combinations at a time.
 *
 * <p>Write it as one plain loop over {@code i}, such as {@code out[i] = x[0][i] * x[1][i] / x[2][i]}: the compiler turns that into vector
 * instructions. It must be a pure function of the numbers in the columns and may be called from several threads.
 */
@FunctionalInterface
public interface RowFormula {

    /**
     * Works the row out.
     *
     * @param columns for each column of the figure its numbers along the row; not to be changed
     * @param from the first index to work out
     * @param to the index behind the last one
     * @param out receives the numbers at the same indices; NaN where there is none
     */
    void fill(double[][] columns, int from, int to, double[] out);

    /**
     * Tells whether one combination may take so long that it is asked ahead of each whether to go on.
     *
     * @return false for a plain loop over a row
     */
    default boolean isSlow() {
        return false;
    }

    /**
     * Makes a row formula from one that takes a combination at a time, which is several times slower.
     *
     * @param formula takes the number of each column
     * @return the row formula
     */
    static RowFormula each(ToDoubleFunction<double[]> formula) {
        return new RowFormula() {
            @Override
            public void fill(double[][] columns, int from, int to, double[] out) {
                double[] numbers = new double[columns.length];
                for (int i = from; i < to; i++) {
                    for (int k = 0; k < numbers.length; k++) {
                        numbers[k] = columns[k][i];
                    }
                    out[i] = formula.applyAsDouble(numbers);
                }
            }

            @Override
            public boolean isSlow() {
                return true;
            }
        };
    }
}
