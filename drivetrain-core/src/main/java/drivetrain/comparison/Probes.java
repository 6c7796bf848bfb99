package drivetrain.comparison;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Specification;
import drivetrain.planner.Column;
import drivetrain.planner.Extreme;
import drivetrain.planner.Figure;
import drivetrain.planner.Product;
import drivetrain.planner.RowFormula;
import drivetrain.planner.Visited;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;

/**
 * Finds out what each part of some lists adds to a measure, by asking the assessment.
 *
 * <p>One package is taken as a base. A part's factor is the measure with that part in the base over the measure of the base. A measure that is a product of
 * what its parts add is then the base's value times the factors, whichever parts are put together. That is tried on packages picked by a seeded chance; a
 * measure that fails the trial is no product and is asked for each package.
 */
final class Probes {

    private static final int TRIALS = 24;
    private static final double SAME = 1e-9;

    private final Combination first;
    private final List<PartList> lists;
    private final List<List<Combination>> single = new ArrayList<>();
    private final Map<Measure, Figure> figures = new HashMap<>();
    private final List<int[]> tried = new ArrayList<>();
    private final List<Combination> trials = new ArrayList<>();
    private final int[] start;
    private double askedSeconds;

    Probes(Specification base, Catalog catalog, List<PartList> lists) {
        this.lists = lists;
        this.start = new int[lists.size()];
        this.first = Combination.of(first(base, lists), catalog);
        for (int d = 0; d < lists.size(); d++) {
            List<Combination> row = new ArrayList<>();
            for (int i = 0; i < lists.get(d).choices().size(); i++) {
                int[] choice = start.clone();
                choice[d] = i;
                row.add(combination(choice));
            }
            single.add(row);
        }
        Random random = new Random(1);
        for (int trial = 0; trial < TRIALS; trial++) {
            int[] choice = new int[lists.size()];
            for (int d = 0; d < choice.length; d++) {
                choice[d] = random.nextInt(lists.get(d).choices().size());
            }
            tried.add(choice);
            trials.add(combination(choice));
        }
    }

    /** Returns how long it takes to ask for one package what is no product; 0 if everything is. */
    double askedSeconds() {
        return askedSeconds;
    }

    /** Makes the choices of a package. */
    Specification specification(int[] choice) {
        Specification chosen = first.specification();
        for (int d = 0; d < choice.length; d++) {
            if (choice[d] != start[d]) {
                PartList list = lists.get(d);
                chosen = list.place().put(chosen, list.choices().get(choice[d]));
            }
        }
        return chosen;
    }

    private static Specification first(Specification base, List<PartList> lists) {
        Specification chosen = base;
        for (PartList list : lists) {
            chosen = list.place().put(chosen, list.choices().get(0));
        }
        return chosen;
    }

    Combination combination(int[] choice) {
        return first.changedTo(specification(choice));
    }

    /** Returns the figure of a measure for the planner. */
    Figure of(Measure measure) {
        Figure known = figures.get(measure);
        if (known == null) {
            known = make(measure);
            figures.put(measure, known);
        }
        return known;
    }

    private Figure make(Measure measure) {
        Figure figure = measure.leastOf().isEmpty()
                ? product(measure).<Figure>map(product -> product).orElseGet(() -> asked(measure))
                : least(measure);
        return agrees(figure, measure) ? figure : asked(measure);
    }

    private Figure least(Measure measure) {
        List<Product> products = new ArrayList<>();
        for (Measure part : measure.leastOf()) {
            Optional<Product> product = product(part);
            if (product.isEmpty()) {
                return asked(measure);
            }
            products.add(product.get());
        }
        return new Extreme(true, products);
    }

    /** The measure as a product over the lists; empty if it has a number that no product can have. */
    private Optional<Product> product(Measure measure) {
        int[] origin = origin(measure);
        boolean isStart = Arrays.equals(origin, start);
        double value = number(measure, combination(origin));
        if (!isFactor(value)) {
            return Optional.empty();
        }
        Product product = Product.of(value);
        for (int d = 0; d < lists.size(); d++) {
            double[] factors = new double[lists.get(d).choices().size()];
            boolean moves = false;
            for (int i = 0; i < factors.length; i++) {
                int[] choice = origin.clone();
                choice[d] = i;
                double number = number(measure, isStart ? single.get(d).get(i) : combination(choice));
                if (!Double.isNaN(number) && !isFactor(number)) {
                    return Optional.empty();
                }
                factors[i] = number / value;
                moves |= factors[i] != 1.0;
            }
            product = moves ? product.times(Column.of(d, factors)) : product;
        }
        return Optional.of(product);
    }

    private static boolean isFactor(double number) {
        return number >= 1e-12 && number <= 1e12;
    }

    /** A package that has the measure: the first of every list, or else the first one found by going along all lists at once. */
    private int[] origin(Measure measure) {
        int most = lists.stream().mapToInt(list -> list.choices().size()).max().orElse(1);
        for (int i = 0; i < most; i++) {
            int[] choice = start.clone();
            for (int d = 0; d < choice.length; d++) {
                choice[d] = i % lists.get(d).choices().size();
            }
            if (!Double.isNaN(number(measure, combination(choice)))) {
                return choice;
            }
        }
        String reason = measure.of(combination(start)).reason().orElse("no package of these lists has it");
        throw Refusal.of(measure.word(), "", "not evaluated because " + reason)
                .allowing("figures that the chosen parts have")
                .asException();
    }

    private static double number(Measure measure, Combination combination) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException();
        }
        return measure.of(combination).value().orElse(Double.NaN);
    }

    private boolean agrees(Figure figure, Measure measure) {
        for (int trial = 0; trial < TRIALS; trial++) {
            double asked = number(measure, trials.get(trial));
            double made = figure.at(tried.get(trial));
            boolean same = Double.isNaN(asked) ? Double.isNaN(made) : Math.abs(made - asked) <= SAME * Math.abs(asked);
            if (!same) {
                return false;
            }
        }
        return true;
    }

    /** The measure asked of each package by itself. */
    private Figure asked(Measure measure) {
        long start = System.nanoTime();
        trials.forEach(trial -> number(measure, trial));
        askedSeconds += (System.nanoTime() - start) / 1e9 / TRIALS;
        List<Column> columns = new ArrayList<>();
        for (int d = 0; d < lists.size(); d++) {
            columns.add(Column.ofIndices(d, lists.get(d).choices().size()));
        }
        return new Visited(columns, RowFormula.each(indices -> {
            int[] choice = new int[indices.length];
            for (int d = 0; d < choice.length; d++) {
                choice[d] = (int) indices[d];
            }
            return number(measure, combination(choice));
        }));
    }
}
