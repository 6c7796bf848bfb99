package drivetrain.planner;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The products of which the declared figures of a query consist, and what its constraints demand of their logarithms.
 *
 * <p>One row of numbers holds a logarithm for each term. Where scores are wanted a last number is added: the part of the score that is linear in the
 * logarithms, which then is one more sum over the axes.
 */
final class Terms {

    /** How far a sum of logarithms may be off before a block of combinations is judged by it; rounding is ten thousand times less. */
    static final double SLACK = 1e-9;

    private final List<Product> products = new ArrayList<>();
    private final Map<Figure, Form> forms = new LinkedHashMap<>();
    private final List<Constraint> constraints = new ArrayList<>();
    private final List<Objective> objectives = new ArrayList<>();
    private final boolean scored;

    /** The form of each declared constraint and its limits in logarithms. */
    final Form[] form;

    final double[] low;
    final double[] high;

    private Terms(List<Constraint> constraints, List<Objective> objectives, boolean scored) {
        for (Constraint constraint : constraints) {
            if (add(constraint.figure())) {
                this.constraints.add(constraint);
            }
        }
        for (Objective objective : objectives) {
            if (add(objective.figure())) {
                this.objectives.add(objective);
            }
        }
        this.scored = scored;
        int count = this.constraints.size();
        form = new Form[count];
        low = new double[count];
        high = new double[count];
        for (int c = 0; c < count; c++) {
            Constraint constraint = this.constraints.get(c);
            form[c] = formOf(constraint.figure());
            low[c] = logarithm(constraint.low());
            high[c] = logarithm(constraint.high());
        }
    }

    /** Returns the terms of the constraints alone. */
    static Terms ofConstraints(Query query) {
        return new Terms(query.constraints(), List.of(), false);
    }

    /** Returns the terms of constraints and objectives, with a score. */
    static Terms scored(Query query) {
        return new Terms(query.constraints(), query.objectives(), true);
    }

    /** A limit that is not above zero lies below every product. */
    private static double logarithm(double limit) {
        return limit > 0.0 ? Math.log(limit) : Double.NEGATIVE_INFINITY;
    }

    private boolean add(Figure figure) {
        if (figure instanceof Visited) {
            return false;
        }
        if (!forms.containsKey(figure)) {
            List<Product> parts = figure instanceof Extreme extreme ? extreme.products() : List.of((Product) figure);
            boolean least = figure instanceof Extreme extreme && extreme.least();
            forms.put(figure, new Form(products.size(), products.size() + parts.size(), least));
            products.addAll(parts);
        }
        return true;
    }

    Form formOf(Figure figure) {
        Form known = forms.get(figure);
        if (known == null) {
            throw new IllegalArgumentException("the figure is not declared");
        }
        return known;
    }

    /** Returns the declared constraints, in the order of the masks. */
    List<Constraint> constraints() {
        return constraints;
    }

    /** Returns the declared objectives. */
    List<Objective> objectives() {
        return objectives;
    }

    /** Returns how many numbers a row of sums has. */
    int width() {
        return products.size() + (scored ? 1 : 0);
    }

    /** Returns the index of the linear part of the score. */
    int score() {
        return products.size();
    }

    /** Returns the mask in which every declared constraint is open. */
    int all() {
        return (1 << form.length) - 1;
    }

    /** Tells whether an objective is one signed logarithm, so that it adds up over the axes. */
    boolean isLinear(Objective objective) {
        return objective.goal() != Objective.Goal.NEAREST
                && formOf(objective.figure()).isSingle();
    }

    /** Returns the sums of a combination without choices: the logarithms of the constants. */
    double[] start() {
        double[] sums = new double[width()];
        for (int t = 0; t < products.size(); t++) {
            sums[t] = Math.log(products.get(t).constant());
        }
        addScore(sums);
        return sums;
    }

    /** Returns what one choice adds to each sum; NaN where a column has no number for it. */
    double[] addends(int dimension, int choice) {
        double[] sums = new double[width()];
        for (int t = 0; t < products.size(); t++) {
            for (Product.Factor factor : products.get(t).factors()) {
                if (factor.column().dimension() == dimension) {
                    double log = Math.log(factor.column().value(choice));
                    sums[t] += factor.divides() ? -log : log;
                }
            }
        }
        addScore(sums);
        return sums;
    }

    /** Returns the columns of a dimension in a term; none for the score. */
    List<Column> columns(int term, int dimension) {
        return term == products.size()
                ? List.of()
                : products.get(term).columns().stream()
                        .filter(column -> column.dimension() == dimension)
                        .toList();
    }

    private void addScore(double[] sums) {
        if (!scored) {
            return;
        }
        for (Objective objective : objectives) {
            if (isLinear(objective)) {
                double sign = objective.goal() == Objective.Goal.LOWEST ? 1.0 : -1.0;
                sums[score()] += sign
                        * objective.weight()
                        * sums[formOf(objective.figure()).from()];
            }
        }
    }

    /**
     * Judges a block of combinations by every open constraint.
     *
     * @return the constraints that stay open, or -1 if one of them fails in the whole block
     */
    int judge(int open, double[] fixed, Axis axis, int node, double[] restLow, double[] restHigh) {
        int offset = node * axis.width;
        int left = open;
        for (int bits = open; bits != 0; bits &= bits - 1) {
            int c = Integer.numberOfTrailingZeros(bits);
            double least = form[c].sum(fixed, axis.least, offset, restLow);
            if (least > high[c] + SLACK) {
                return -1;
            }
            double greatest = form[c].sum(fixed, axis.greatest, offset, restHigh);
            if (greatest < low[c] - SLACK) {
                return -1;
            }
            if (least >= low[c] + SLACK && greatest <= high[c] - SLACK) {
                left &= ~(1 << c);
            }
        }
        return left;
    }

    /**
     * Tells whether one of the open constraints can still change its mind along a part of an axis. A term that the limit does not depend on any more, such
     * as the greater of two of which the lesser must keep below, does not count.
     */
    boolean moves(int open, double[] fixed, Axis axis, int node, double[] restLow, double[] restHigh) {
        int offset = node * axis.width;
        for (int bits = open; bits != 0; bits &= bits - 1) {
            int c = Integer.numberOfTrailingZeros(bits);
            Form one = form[c];
            boolean canSettle = !one.isSingle()
                    && (one.least() ? low[c] == Double.NEGATIVE_INFINITY : high[c] == Double.POSITIVE_INFINITY);
            for (int t = one.from(); t < one.to(); t++) {
                boolean isOut = canSettle
                        && (one.least()
                                ? fixed[t] + axis.least[offset + t] + restLow[t] > high[c] + SLACK
                                : fixed[t] + axis.greatest[offset + t] + restHigh[t] < low[c] - SLACK);
                if (axis.changes(t) && !isOut) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Judges what is left when some choices are fixed. */
    int judge(int open, double[] fixed, double[] restLow, double[] restHigh) {
        int left = open;
        for (int bits = open; bits != 0; bits &= bits - 1) {
            int c = Integer.numberOfTrailingZeros(bits);
            double least = form[c].sum(fixed, restLow);
            double greatest = form[c].sum(fixed, restHigh);
            if (least > high[c] + SLACK || greatest < low[c] - SLACK) {
                return -1;
            }
            if (least >= low[c] + SLACK && greatest <= high[c] - SLACK) {
                left &= ~(1 << c);
            }
        }
        return left;
    }

    /** Works every open constraint out for one combination, as the figures define it. */
    boolean passes(int open, int[] choice) {
        for (int bits = open; bits != 0; bits &= bits - 1) {
            Constraint constraint = constraints.get(Integer.numberOfTrailingZeros(bits));
            if (!constraint.passes(constraint.figure().at(choice))) {
                return false;
            }
        }
        return true;
    }
}
