package drivetrain.comparison;

import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Figure;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One figure of an assessment by which drivetrain packages are compared.
 *
 * <p>Its value comes from the assessment and from nowhere else. Whether it is a product of what each part adds, as most figures of a drivetrain are, is not
 * declared but found out where it matters.
 */
public final class Measure {

    private final String key;
    private final String word;
    private final Better better;
    private final Scale scale;
    private final Function<Combination, MeasureGround> ground;
    private final Function<Combination, Outcome<Double>> reader;
    private final List<Measure> leastOf;

    private Measure(
            String key,
            String word,
            Better better,
            Scale scale,
            Function<Combination, MeasureGround> ground,
            Function<Combination, Outcome<Double>> reader,
            List<Measure> leastOf) {
        this.key = key;
        this.word = word;
        this.better = better;
        this.scale = scale;
        this.ground = ground;
        this.reader = reader;
        this.leastOf = leastOf;
    }

    /** Makes a measure; the reader gives the number on the scale, the ground what it rests on. */
    static Measure of(
            String key,
            String word,
            Better better,
            Scale scale,
            Function<Combination, MeasureGround> ground,
            Function<Combination, Outcome<Double>> reader) {
        return new Measure(key, word, better, scale, ground, reader, List.of());
    }

    /** Makes a measure that is the least of others on the same scale and ground. */
    static Measure least(String key, String word, Better better, List<Measure> others) {
        Function<Combination, Outcome<Double>> reader = combination -> {
            double least = Double.POSITIVE_INFINITY;
            for (Measure other : others) {
                Outcome<Double> value = other.of(combination);
                Optional<Double> known = value.value();
                if (known.isEmpty()) {
                    return value;
                }
                least = Math.min(least, known.get());
            }
            return Outcome.of(least);
        };
        return new Measure(key, word, better, others.get(0).scale, others.get(0).ground, reader, List.copyOf(others));
    }

    /**
     * Returns the machine name.
     *
     * @return a lower-case letter, then letters and digits
     */
    public String key() {
        return key;
    }

    /**
     * Returns what the figure of a package rests on.
     *
     * @param combination the package
     * @return the assumptions and the warnings
     */
    public MeasureGround ground(Combination combination) {
        return ground.apply(combination);
    }

    /**
     * Returns the words by which it is asked for.
     *
     * @return the words, with the speed where it is asked at one
     */
    public String word() {
        return word;
    }

    /**
     * Returns which way it is better.
     *
     * @return the direction, or that it depends
     */
    public Better better() {
        return better;
    }

    /**
     * Returns how its numbers are read and shown.
     *
     * @return the scale
     */
    public Scale scale() {
        return scale;
    }

    /**
     * Returns the number of a drivetrain package.
     *
     * @param combination the package
     * @return the number on the scale, or what is missing
     */
    public Outcome<Double> of(Combination combination) {
        return reader.apply(combination);
    }

    /**
     * Returns the figure of a drivetrain package.
     *
     * @param combination the package
     * @return the figure, or what is missing
     */
    public Outcome<Figure> figure(Combination combination) {
        return of(combination).map(scale::figure);
    }

    /** Returns the measures of which this is the least; empty if it stands for itself. */
    List<Measure> leastOf() {
        return leastOf;
    }

    /**
     * Returns the words.
     *
     * @return the words
     */
    @Override
    public String toString() {
        return word;
    }
}
