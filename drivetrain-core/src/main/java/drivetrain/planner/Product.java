package drivetrain.planner;

import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;

/**
 * A constant times columns and over columns, all of them greater than zero: rises with the ones and falls with the others.
 *
 * <p>It is worked out from left to right in {@code double}. To judge a block of combinations the planner adds logarithms instead, with a slack far
 * above the difference.
 *
 * @param constant the constant, 1e-30 to 1e30
 * @param factors the columns, at most {@value #MOST_FACTORS}
 */
public record Product(double constant, List<Factor> factors) implements Figure {

    /** The most columns that one product can have, so that it stays within the range of {@code double}. */
    public static final int MOST_FACTORS = 9;

    private static final double LEAST = 1e-30;
    private static final double GREATEST = 1e30;

    /**
     * One column of a product.
     *
     * @param column the column
     * @param divides true if the product is divided by it
     */
    public record Factor(Column column, boolean divides) {}

    /**
     * Checks the numbers.
     *
     * @throws drivetrain.refusal.RefusedException if the constant or a number in a column is not within 1e-30 and 1e30, or if there are too many
     *     columns
     */
    public Product {
        factors = List.copyOf(factors);
        if (factors.size() > MOST_FACTORS) {
            throw Refusal.of("product", factors.size() + " columns", "has too many columns")
                    .allowing("at most " + MOST_FACTORS)
                    .asException();
        }
        requireInRange(constant);
        for (Factor factor : factors) {
            for (int i = 0; i < factor.column.size(); i++) {
                double value = factor.column.value(i);
                if (!Double.isNaN(value)) {
                    requireInRange(value);
                }
            }
        }
    }

    private static void requireInRange(double value) {
        if (!(value >= LEAST && value <= GREATEST)) {
            throw Refusal.of("factor", Double.toString(value), "cannot be a factor of a product")
                    .allowing("numbers from 1e-30 to 1e30")
                    .asException();
        }
    }

    /**
     * Starts a product.
     *
     * @param constant the constant, greater than zero
     * @return a product without columns
     * @throws drivetrain.refusal.RefusedException if the constant is out of range
     */
    public static Product of(double constant) {
        return new Product(constant, List.of());
    }

    /**
     * Multiplies by a column.
     *
     * @param column the column
     * @return the longer product
     * @throws drivetrain.refusal.RefusedException if the column holds a number that is out of range
     */
    public Product times(Column column) {
        return with(new Factor(column, false));
    }

    /**
     * Divides by a column.
     *
     * @param column the column
     * @return the longer product
     * @throws drivetrain.refusal.RefusedException if the column holds a number that is out of range
     */
    public Product over(Column column) {
        return with(new Factor(column, true));
    }

    private Product with(Factor factor) {
        List<Factor> longer = new ArrayList<>(factors);
        longer.add(factor);
        return new Product(constant, longer);
    }

    @Override
    public double at(int[] choice) {
        double product = constant;
        for (Factor factor : factors) {
            double value = factor.column.value(choice[factor.column.dimension()]);
            product = factor.divides ? product / value : product * value;
        }
        return product;
    }

    @Override
    public List<Column> columns() {
        return factors.stream().map(Factor::column).toList();
    }
}
