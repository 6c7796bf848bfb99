package drivetrain.comparison;

import drivetrain.combination.Combination;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * In which range each measure lies when some figures of parts are known only within a tolerance.
 *
 * <p>Two ranges are given. The extremes put every figure at one end or the other of its tolerance, in every combination: nothing lies outside, because no measure
 * turns back within a tolerance. The quantiles are those of {@value #SAMPLES} packages drawn by a seeded chance, each figure uniform within its tolerance and
 * independent of the others: nine in ten lie between the 5 % and the 95 % quantile.
 *
 * @param tolerances the figures and their tolerances, as fractions
 * @param rows the measures that the package has
 */
public record Tolerance(Map<Lever, Double> tolerances, List<Row> rows) {

    /** How many packages are drawn. */
    public static final int SAMPLES = 2000;

    /** The seed of the chance, fixed so that the same question has the same answer. */
    public static final int SEED = 20260601;

    private static final double GREATEST = 0.2;

    /**
     * One measure.
     *
     * @param measure the measure
     * @param number its number as it stands
     * @param least its least number at any ends of the tolerances
     * @param greatest its greatest number
     * @param q05 the 5 % quantile of the drawn packages
     * @param median the median
     * @param q95 the 95 % quantile
     */
    public record Row(
            Measure measure, double number, double least, double greatest, double q05, double median, double q95) {}

    /** Copies. */
    public Tolerance {
        tolerances = Collections.unmodifiableMap(new LinkedHashMap<>(tolerances));
        rows = List.copyOf(rows);
    }

    /**
     * Works the ranges out.
     *
     * @param combination the package
     * @param measures the measures; those that cannot be evaluated are left out
     * @param tolerances for each figure the tolerance as a fraction, above 0 and at most 0.2
     * @return the ranges
     * @throws drivetrain.refusal.RefusedException if there is no tolerance, if one is out of range, if the package has no such figure, or if a part cannot be
     *     made at an end of its tolerance
     */
    public static Tolerance of(Combination combination, List<Measure> measures, Map<Lever, Double> tolerances) {
        check(combination, tolerances);
        Adjusted adjusted = new Adjusted(combination);
        List<Measure> known = measures.stream()
                .filter(measure -> measure.of(combination).value().isPresent())
                .toList();
        double[][] corners = corners(adjusted, known, tolerances);
        double[][] samples = samples(adjusted, known, tolerances);
        List<Row> rows = new ArrayList<>();
        for (int m = 0; m < known.size(); m++) {
            double[] at = corners[m];
            Percentile percentile = new Percentile();
            percentile.setData(samples[m]);
            rows.add(new Row(
                    known.get(m),
                    known.get(m).of(combination).orThrow(),
                    Arrays.stream(at).min().orElse(Double.NaN),
                    Arrays.stream(at).max().orElse(Double.NaN),
                    percentile.evaluate(5.0),
                    percentile.evaluate(50.0),
                    percentile.evaluate(95.0)));
        }
        return new Tolerance(tolerances, rows);
    }

    private static void check(Combination combination, Map<Lever, Double> tolerances) {
        if (tolerances.isEmpty()) {
            throw Refusal.of("tolerance", "", "is not given for anything")
                    .allowing("a part and its tolerance, such as tire 1 %")
                    .asException();
        }
        tolerances.forEach((lever, fraction) -> {
            Optional<String> missing = lever.number(combination).reason();
            if (missing.isPresent()) {
                throw Refusal.of("tolerance", lever.word(), "not evaluated because " + missing.get())
                        .asException();
            }
            if (!(fraction > 0.0 && fraction <= GREATEST)) {
                throw Refusal.of("tolerance", lever.word() + " " + 100.0 * fraction + " %", "is no tolerance")
                        .allowing("more than 0 %, at most 20 %")
                        .asException();
            }
        });
    }

    private static double[][] corners(Adjusted adjusted, List<Measure> measures, Map<Lever, Double> tolerances) {
        int count = 1 << tolerances.size();
        double[][] numbers = new double[measures.size()][count];
        for (int corner = 0; corner < count; corner++) {
            Map<Lever, Double> factors = new LinkedHashMap<>();
            int bits = corner;
            for (Map.Entry<Lever, Double> tolerance : tolerances.entrySet()) {
                factors.put(tolerance.getKey(), 1.0 + (bits % 2 == 0 ? -1.0 : 1.0) * tolerance.getValue());
                bits /= 2;
            }
            fill(numbers, corner, measures, adjusted.with(factors));
        }
        return numbers;
    }

    private static double[][] samples(Adjusted adjusted, List<Measure> measures, Map<Lever, Double> tolerances) {
        RandomGenerator random = new Well19937c(SEED);
        double[][] numbers = new double[measures.size()][SAMPLES];
        for (int sample = 0; sample < SAMPLES; sample++) {
            Map<Lever, Double> factors = new LinkedHashMap<>();
            tolerances.forEach((lever, fraction) ->
                    factors.put(lever, 1.0 + fraction * (2.0 * random.nextDouble() - 1.0)));
            fill(numbers, sample, measures, adjusted.with(factors));
        }
        return numbers;
    }

    private static void fill(double[][] numbers, int index, List<Measure> measures, Combination combination) {
        for (int m = 0; m < measures.size(); m++) {
            numbers[m][index] = measures.get(m).of(combination).value().orElse(Double.NaN);
        }
    }
}
