package drivetrain.planner;

import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;

/**
 * What is asked of all combinations of choices, one from each dimension.
 *
 * @param sizes how many choices each dimension has
 * @param constraints what a combination must keep
 * @param objectives what is wished of it; scores add up
 * @param best how many of the best are wanted, 0 for the count alone
 */
public record Query(List<Integer> sizes, List<Constraint> constraints, List<Objective> objectives, int best) {

    /** The most constraints. */
    public static final int MOST_CONSTRAINTS = 30;

    /** The most dimensions. */
    public static final int MOST_DIMENSIONS = 30;

    /**
     * Checks that everything fits together.
     *
     * @throws drivetrain.refusal.RefusedException if a dimension is empty, if a column is not of the length of its dimension, if there are too many
     *     of anything, or more combinations than a {@code long} counts
     */
    public Query {
        sizes = List.copyOf(sizes);
        constraints = List.copyOf(constraints);
        objectives = List.copyOf(objectives);
        requireSizes(sizes);
        require(best >= 0, "best", best, "is below zero", "0 or more");
        require(
                constraints.size() <= MOST_CONSTRAINTS,
                "constraints",
                constraints.size(),
                "are too many",
                "at most 30");
        for (Figure figure : figures(constraints, objectives)) {
            for (Column column : figure.columns()) {
                int dimension = column.dimension();
                require(dimension < sizes.size(), "dimension", dimension, "does not exist", "below " + sizes.size());
                int size = sizes.get(dimension);
                require(column.size() == size, "column", column.size(), "has another length", size + " choices");
            }
        }
    }

    private static void requireSizes(List<Integer> sizes) {
        require(
                !sizes.isEmpty() && sizes.size() <= MOST_DIMENSIONS,
                "dimensions",
                sizes.size(),
                "is no count",
                "1 to 30");
        long product = 1;
        for (int size : sizes) {
            require(size > 0, "dimension", size, "has no choices", "at least one choice");
            require(
                    product <= Long.MAX_VALUE / size,
                    "dimension",
                    size,
                    "makes too many combinations",
                    "fewer choices");
            product *= size;
        }
    }

    private static void require(boolean isRight, String subject, int given, String problem, String allowed) {
        if (!isRight) {
            throw Refusal.of(subject, Integer.toString(given), problem)
                    .allowing(allowed)
                    .asException();
        }
    }

    /**
     * Returns how many combinations there are.
     *
     * @return the product of the sizes
     */
    public long combinations() {
        long product = 1;
        for (int size : sizes) {
            product *= size;
        }
        return product;
    }

    /**
     * Returns the same question with other constraints.
     *
     * @param others the constraints
     * @return a copy
     * @throws drivetrain.refusal.RefusedException if they do not fit
     */
    public Query with(List<Constraint> others) {
        return new Query(sizes, others, objectives, best);
    }

    /**
     * Returns the question for the count alone.
     *
     * @return a copy that wants none of the best
     */
    public Query counting() {
        return new Query(sizes, constraints, objectives, 0);
    }

    List<Figure> figures() {
        return figures(constraints, objectives);
    }

    private static List<Figure> figures(List<Constraint> constraints, List<Objective> objectives) {
        List<Figure> figures = new ArrayList<>();
        constraints.forEach(constraint -> figures.add(constraint.figure()));
        objectives.forEach(objective -> figures.add(objective.figure()));
        return figures;
    }

    /** Returns the score of one combination, or NaN if it does not pass or has none. */
    double score(int[] choice) {
        for (Constraint constraint : constraints) {
            if (!constraint.passes(constraint.figure().at(choice))) {
                return Double.NaN;
            }
        }
        double score = 0.0;
        for (Objective objective : objectives) {
            score += objective.score(objective.figure().at(choice));
        }
        return score;
    }
}
