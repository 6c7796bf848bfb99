package drivetrain.planner;

import java.util.List;

/**
 * A number that each combination of choices has.
 *
 * <p>A {@link Product} and an {@link Extreme} say how they move with each column, so that whole blocks of combinations are judged at once. A
 * {@link Visited} figure says nothing, and every combination that the other constraints leave has to be looked at.
 */
public sealed interface Figure permits Product, Extreme, Visited {

    /**
     * Works the figure out for one combination.
     *
     * @param choice the index of the choice in each dimension
     * @return the number, or NaN where a column has none
     */
    double at(int[] choice);

    /**
     * Returns the columns that the figure depends on.
     *
     * @return the columns, in the order in which they enter
     */
    List<Column> columns();
}
