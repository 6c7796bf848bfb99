package drivetrain.comparison;

import drivetrain.assessment.Answer;
import drivetrain.assessment.Assessment;
import drivetrain.assessment.Question;
import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What some figures of some packages rest on, and the warnings that belong to them: those of the answers that the figures are taken from, and
 * not those of everything else that the packages could be asked.
 *
 * @param assumptions each once
 * @param cautions each once
 */
public record MeasureGround(List<Assumption> assumptions, List<Caution> cautions) {

    private static final Map<String, Question> QUESTIONS = Map.ofEntries(
            Map.entry(Measures.CRAWL_RATIO.key(), Question.CRAWL),
            Map.entry(Measures.CRAWL_SPEED.key(), Question.CRAWL),
            Map.entry(Measures.WHEEL_TORQUE.key(), Question.TORQUE),
            Map.entry(Measures.GEARED_SPEED.key(), Question.SPEEDS),
            Map.entry(Measures.SHAFT_SPEED.key(), Question.SPEEDS),
            Map.entry(Measures.FUEL_FLOW.key(), Question.SUPPLY),
            Map.entry(Measures.CRITICAL_SHARE.key(), Question.SHAFTS),
            Map.entry(Measures.SPEEDOMETER.key(), Question.SPEEDOMETER),
            Map.entry(Measures.PEAK_TORQUE.key(), Question.ENGINE),
            Map.entry(Measures.PEAK_POWER.key(), Question.ENGINE),
            Map.entry(Measures.TIRE_DIAMETER.key(), Question.TIRE));

    /** Copies the lists. */
    public MeasureGround {
        assumptions = List.copyOf(assumptions);
        cautions = List.copyOf(cautions);
    }

    /**
     * Collects the ground of figures.
     *
     * @param measures the figures
     * @param combinations the packages
     * @return what they rest on
     */
    public static MeasureGround of(Collection<Measure> measures, Collection<Combination> combinations) {
        Set<Assumption> assumptions = new LinkedHashSet<>();
        Set<Caution> cautions = new LinkedHashSet<>();
        for (Combination combination : combinations) {
            Set<Question> asked = new LinkedHashSet<>();
            boolean isWhole = false;
            for (Measure measure : measures) {
                Optional<Question> question = question(measure);
                question.ifPresent(asked::add);
                isWhole |= question.isEmpty();
            }
            if (isWhole) {
                Assessment assessment = Assessment.of(combination);
                assumptions.addAll(assessment.assumptions());
                cautions.addAll(assessment.cautions());
                continue;
            }
            for (Question question : asked) {
                Optional<? extends Answer> answer = question.of(combination).value();
                answer.ifPresent(given -> {
                    assumptions.addAll(given.assumptions());
                    cautions.addAll(given.cautions());
                });
            }
        }
        return new MeasureGround(List.copyOf(assumptions), List.copyOf(cautions));
    }

    /** The question that a figure is taken from; empty where it needs the whole assessment. */
    private static Optional<Question> question(Measure measure) {
        return Measures.isEngineSpeed(measure)
                ? Optional.of(Question.SPEEDS)
                : Optional.ofNullable(QUESTIONS.get(measure.key()));
    }
}
