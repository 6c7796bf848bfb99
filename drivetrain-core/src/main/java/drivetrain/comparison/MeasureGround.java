package drivetrain.comparison;

import drivetrain.assessment.Answer;
import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Outcome;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * What some figures of some packages rest on, and the warnings that belong to them: those of the answers that the figures are taken from, and
 * not those of everything else that the packages could be asked.
 *
 * @param assumptions each once
 * @param cautions each once
 */
public record MeasureGround(List<Assumption> assumptions, List<Caution> cautions) {

    private static final MeasureGround NONE = new MeasureGround(List.of(), List.of());

    /** Keeps each assumption and each caution once. */
    public MeasureGround {
        assumptions = assumptions.stream().distinct().toList();
        cautions = cautions.stream().distinct().toList();
    }

    /**
     * Takes the ground of an answer.
     *
     * @param answer the answer
     * @return its ground; empty if it is not evaluated, for then no figure rests on it
     */
    public static MeasureGround of(Outcome<? extends Answer> answer) {
        return answer.value()
                .map(given -> new MeasureGround(given.assumptions(), given.cautions()))
                .orElse(NONE);
    }

    /** Takes one assumption as a ground. */
    static MeasureGround of(Assumption assumption) {
        return new MeasureGround(List.of(assumption), List.of());
    }

    /** Returns a ground of nothing. */
    static MeasureGround none() {
        return NONE;
    }

    /**
     * Collects the ground of figures.
     *
     * @param measures the figures
     * @param combinations the packages
     * @return what they rest on
     */
    public static MeasureGround of(Collection<Measure> measures, Collection<Combination> combinations) {
        return combinations.stream()
                .flatMap(combination -> measures.stream().map(measure -> measure.ground(combination)))
                .reduce(NONE, MeasureGround::and);
    }

    /**
     * Puts two grounds together.
     *
     * @param other the other one
     * @return both
     */
    public MeasureGround and(MeasureGround other) {
        return new MeasureGround(
                Stream.concat(assumptions.stream(), other.assumptions.stream()).toList(),
                Stream.concat(cautions.stream(), other.cautions.stream()).toList());
    }
}
