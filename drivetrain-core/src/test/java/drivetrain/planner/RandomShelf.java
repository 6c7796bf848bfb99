package drivetrain.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Small queries by chance. Numbers come from few values, so that parts are alike, scores tie and limits are met exactly; some parts lack a number.
 */
final class RandomShelf {

    private final Random random;
    private final List<Integer> sizes = new ArrayList<>();
    private final boolean visits;

    private RandomShelf(Random random, boolean visits) {
        this.random = random;
        this.visits = visits;
        int dimensions = 1 + random.nextInt(4);
        for (int d = 0; d < dimensions; d++) {
            sizes.add(1 + random.nextInt(random.nextInt(4) == 0 ? 12 : 4));
        }
    }

    static Query query(Random random, boolean visits) {
        return new RandomShelf(random, visits).query();
    }

    private Query query() {
        List<Figure> figures = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            figures.add(figure());
        }
        List<Constraint> constraints = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            constraints.add(constraint(one(figures)));
        }
        List<Objective> objectives = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            objectives.add(objective(one(figures)));
        }
        return new Query(sizes, constraints, objectives, random.nextInt(12));
    }

    private <T> T one(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    private Figure figure() {
        int kind = random.nextInt(visits ? 5 : 3);
        if (kind < 2) {
            return product();
        }
        if (kind == 2) {
            return new Extreme(random.nextBoolean(), List.of(product(), product()));
        }
        List<Column> columns = List.of(column(), column());
        return kind == 3
                ? new Visited(columns, (x, from, to, out) -> {
                    for (int i = from; i < to; i++) {
                        out[i] = x[0][i] * 2.0 - x[1][i];
                    }
                })
                : new Visited(columns, RowFormula.each(x -> Math.abs(x[0] - 2.0) + x[1] / 3.0));
    }

    private Product product() {
        Product product = Product.of(one(List.of(1.0, 0.1, 7.0)));
        for (int i = random.nextInt(4); i >= 0; i--) {
            product = random.nextBoolean() ? product.times(column()) : product.over(column());
        }
        return product;
    }

    private Column column() {
        int dimension = random.nextInt(sizes.size());
        double[] values = new double[sizes.get(dimension)];
        boolean coarse = random.nextInt(3) > 0;
        double step = one(List.of(0.1, 1.0, 1.0 / 3.0));
        for (int i = 0; i < values.length; i++) {
            values[i] = coarse ? step * (1 + random.nextInt(5)) : 0.5 + random.nextDouble();
            if (random.nextInt(60) == 0) {
                values[i] = Double.NaN;
            }
        }
        return Column.of(dimension, values);
    }

    /** A limit is often what some combination has, to the last bit. */
    private double limit(Figure figure) {
        int[] choice = sizes.stream().mapToInt(random::nextInt).toArray();
        double value = figure.at(choice);
        if (Double.isNaN(value) || random.nextInt(20) == 0) {
            return random.nextInt(5) - 1;
        }
        return switch (random.nextInt(4)) {
            case 0 -> Math.nextUp(value);
            case 1 -> Math.nextDown(value);
            default -> value;
        };
    }

    private Constraint constraint(Figure figure) {
        double a = limit(figure);
        double b = limit(figure);
        return switch (random.nextInt(3)) {
            case 0 -> Constraint.atLeast(figure, a);
            case 1 -> Constraint.atMost(figure, a);
            default -> Constraint.between(figure, Math.min(a, b), Math.max(a, b));
        };
    }

    private Objective objective(Figure figure) {
        double weight = 1 + random.nextInt(3);
        return switch (random.nextInt(3)) {
            case 0 -> Objective.lowest(figure, weight);
            case 1 -> Objective.highest(figure, weight);
            default -> Objective.nearest(figure, weight, 0.5 + random.nextInt(4));
        };
    }
}
