package drivetrain.comparison;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * In which range each measure lies when some figures are known only within a tolerance.
 *
 * <p>Two ranges are given. Least and greatest are those of every combination of figures at one end or the other of their tolerances, of the package as it stands and of
 * all that are drawn: a measure that grows or falls all the way with each figure, as nearly all do, gets no farther. A residual angle can turn back within
 * a tolerance, which is why the others are looked at too. The quantiles are those of {@value #SAMPLES} packages drawn by a seeded chance, each figure
 * uniform within its tolerance and independent of the others: nine in ten lie between the 5 % and the 95 % quantile.
 *
 * @param uncertain what is uncertain
 * @param rows the measures that the package has
 */
public record Tolerance(List<Uncertain> uncertain, List<Row> rows) {

    /** How many packages are drawn. */
    public static final int SAMPLES = 2000;

    /** The seed of the chance, fixed so that the same question has the same answer. */
    public static final int SEED = 20260601;

    private static final int MOST_ENDS = 12;

    /**
     * One measure.
     *
     * @param measure the measure
     * @param number its number as it stands
     * @param least its least number within the tolerances
     * @param greatest its greatest number
     * @param q05 the 5 % quantile of the drawn packages
     * @param median the median
     * @param q95 the 95 % quantile
     */
    public record Row(
            Measure measure, double number, double least, double greatest, double q05, double median, double q95) {}

    /** Copies. */
    public Tolerance {
        uncertain = List.copyOf(uncertain);
        rows = List.copyOf(rows);
    }

    /**
     * Works the ranges out.
     *
     * @param combination the package
     * @param measures the measures; those that cannot be evaluated are left out
     * @param uncertain what is uncertain, each once
     * @return the ranges
     * @throws drivetrain.refusal.RefusedException if nothing is uncertain, if the package has no such figure, or if a part cannot be made at an end of its
     *     tolerance
     * @throws CancellationException if the thread is interrupted
     */
    public static Tolerance of(Combination combination, List<Measure> measures, List<Uncertain> uncertain) {
        check(combination, uncertain);
        Adjusted adjusted = new Adjusted(combination);
        List<Measure> known = measures.stream()
                .filter(measure -> measure.of(combination).value().isPresent())
                .toList();
        double[][] corners = corners(adjusted, combination, known, uncertain);
        List<Measure> moving = new ArrayList<>();
        for (int m = 0; m < known.size(); m++) {
            double number = known.get(m).of(combination).orThrow();
            if (Arrays.stream(corners[m]).anyMatch(corner -> corner != number)) {
                moving.add(known.get(m));
            }
        }
        double[][] samples = samples(adjusted, combination, moving, uncertain);
        List<Row> rows = new ArrayList<>();
        for (int m = 0; m < known.size(); m++) {
            Measure measure = known.get(m);
            double number = measure.of(combination).orThrow();
            int drawn = moving.indexOf(measure);
            rows.add(
                    drawn < 0
                            ? new Row(measure, number, number, number, number, number, number)
                            : row(measure, number, corners[m], samples[drawn]));
        }
        return new Tolerance(uncertain, rows);
    }

    private static Row row(Measure measure, double number, double[] corners, double[] samples) {
        Percentile percentile = new Percentile();
        percentile.setData(samples);
        double least = Math.min(number, Math.min(least(corners), least(samples)));
        double greatest = Math.max(number, Math.max(greatest(corners), greatest(samples)));
        return new Row(
                measure,
                number,
                least,
                greatest,
                percentile.evaluate(5.0),
                percentile.evaluate(50.0),
                percentile.evaluate(95.0));
    }

    private static double least(double[] numbers) {
        return Arrays.stream(numbers).min().orElse(Double.NaN);
    }

    private static double greatest(double[] numbers) {
        return Arrays.stream(numbers).max().orElse(Double.NaN);
    }

    private static void check(Combination combination, List<Uncertain> uncertain) {
        if (uncertain.isEmpty()) {
            throw Refusal.of("tolerance", "", "is not given for anything")
                    .allowing("a part and its tolerance, such as tire 1 %")
                    .asException();
        }
        int ends = 0;
        for (Uncertain one : uncertain) {
            Optional<String> missing = one.missing(combination);
            if (missing.isPresent()) {
                throw Refusal.of("tolerance", one.word(), "not evaluated because " + missing.get())
                        .asException();
            }
            ends += one.ends(combination);
        }
        if (ends > MOST_ENDS) {
            throw Refusal.of("tolerance", ends + " uncertain figures", "are too many at once")
                    .allowing("at most " + MOST_ENDS)
                    .asException();
        }
    }

    private static double[][] corners(
            Adjusted adjusted, Combination combination, List<Measure> measures, List<Uncertain> uncertain) {
        int ends = uncertain.stream().mapToInt(one -> one.ends(combination)).sum();
        int count = 1 << ends;
        double[][] numbers = new double[measures.size()][count];
        for (int corner = 0; corner < count; corner++) {
            Map<Slot, Object> items = adjusted.items();
            int bits = corner;
            for (Uncertain one : uncertain) {
                double[] errors = new double[one.ends(combination)];
                for (int i = 0; i < errors.length; i++) {
                    errors[i] = bits % 2 == 0 ? -1.0 : 1.0;
                    bits /= 2;
                }
                one.apply(items, errors);
            }
            fill(numbers, corner, measures, adjusted.resolve(items));
        }
        return numbers;
    }

    private static double[][] samples(
            Adjusted adjusted, Combination combination, List<Measure> measures, List<Uncertain> uncertain) {
        RandomGenerator random = new Well19937c(SEED);
        double[][] numbers = new double[measures.size()][SAMPLES];
        for (int sample = 0; sample < SAMPLES; sample++) {
            Map<Slot, Object> items = adjusted.items();
            for (Uncertain one : uncertain) {
                double[] errors = new double[one.draws(combination)];
                for (int i = 0; i < errors.length; i++) {
                    errors[i] = 2.0 * random.nextDouble() - 1.0;
                }
                one.apply(items, errors);
            }
            fill(numbers, sample, measures, adjusted.resolve(items));
        }
        return numbers;
    }

    private static void fill(double[][] numbers, int index, List<Measure> measures, Combination combination) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException();
        }
        for (int m = 0; m < measures.size(); m++) {
            numbers[m][index] = measures.get(m).of(combination).value().orElse(Double.NaN);
        }
    }
}
