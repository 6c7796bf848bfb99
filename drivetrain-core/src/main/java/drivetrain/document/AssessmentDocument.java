package drivetrain.document;

import drivetrain.assessment.Answer;
import drivetrain.assessment.Assessment;
import drivetrain.assessment.Question;
import drivetrain.combination.Condition;
import drivetrain.combination.Specification;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.function.BiConsumer;

/**
 * Writes an assessment as one line of JSON: every answer with its working, or why it was not evaluated; every finding, assumption and caution with its
 * source.
 *
 * <p>Figures are numbers in full with their unit beside them. The document is written only; the order and the catalog make it anew.
 */
public final class AssessmentDocument {

    /** The value of the field {@code document}. */
    static final String KIND = "drivetrain-assessment";

    private AssessmentDocument() {}

    /**
     * Writes an assessment to a file, which is whole at every moment.
     *
     * @param file the file, in a folder that exists
     * @param assessment the assessment
     * @param units the system of units; {@link UnitSystem#BOTH} gives US units
     * @throws IOException if the file cannot be written; it is then as it was before
     */
    public static void write(Path file, Assessment assessment, UnitSystem units) throws IOException {
        AtomicFile.write(file, text(assessment, units) + "\n");
    }

    /**
     * Writes an assessment as a text.
     *
     * @param assessment the assessment
     * @param units the system of units; {@link UnitSystem#BOTH} gives US units
     * @return one line of JSON
     */
    public static String text(Assessment assessment, UnitSystem units) {
        FigureTree tree = new FigureTree(units);
        tree.with(DocumentHead.DOCUMENT, KIND)
                .with(DocumentHead.VERSION, DocumentHead.CURRENT)
                .with("order", order(tree, assessment.combination().specification()))
                .with("verdict", assessment.verdict().label())
                .with("answers", answers(tree, assessment))
                .withList("findings", assessment.findings(), EvidenceTree::finding)
                .withList("assumptions", assessment.assumptions(), EvidenceTree::assumption)
                .withList("cautions", assessment.cautions(), EvidenceTree::caution);
        return JsonText.write(tree.map());
    }

    private static FigureTree order(FigureTree tree, Specification order) {
        FigureTree inner = tree.inner();
        if (!order.title().isEmpty()) {
            inner.with(DocumentHead.TITLE, order.title());
        }
        order.choices().forEach((slot, choice) -> inner.with(slot.key(), choice));
        for (Condition condition : Condition.values()) {
            condition.in(order).ifPresent(text -> inner.with(condition.key(), text));
        }
        if (!order.notes().isEmpty()) {
            inner.with(OrderDocument.NOTES, order.notes());
        }
        return inner;
    }

    private static FigureTree answers(FigureTree tree, Assessment assessment) {
        FigureTree answers = tree.inner();
        answer(answers, Question.CRUISE, assessment.cruise(), AnswerTree::cruise);
        answer(answers, Question.SPEEDS, assessment.speeds(), AnswerTree::speeds);
        answer(answers, Question.CRAWL, assessment.crawl(), AnswerTree::crawl);
        answer(answers, Question.TORQUE, assessment.torque(), AnswerTree::torque);
        answer(answers, Question.SHIFTS, assessment.shifts(), AnswerTree::shifts);
        answer(answers, Question.SPEEDOMETER, assessment.speedometer(), AnswerTree::speedometer);
        answer(answers, Question.ENGINE, assessment.engine(), AnswerTree::engine);
        answer(answers, Question.TIRE, assessment.tire(), AnswerTree::tire);
        answer(answers, Question.SHAFTS, assessment.shafts(), ShaftTree::shafts);
        answer(answers, Question.CRITICAL, assessment.critical(), ShaftTree::critical);
        answer(answers, Question.TORSION, assessment.torsion(), ShaftTree::torsion);
        answer(answers, Question.TRAVEL, assessment.travel(), ShaftTree::travel);
        answer(answers, Question.PULL, assessment.pull(), RoadAnswerTree::pull);
        answer(answers, Question.TOP, assessment.top(), RoadAnswerTree::top);
        answer(answers, Question.GRIP, assessment.grip(), RoadAnswerTree::grip);
        answer(answers, Question.LOADS, assessment.loads(), RoadAnswerTree::loads);
        answer(answers, Question.CONVERTER, assessment.converter(), RoadAnswerTree::converter);
        answer(answers, Question.SUPPLY, assessment.supply(), FuelAnswerTree::supply);
        answer(answers, Question.TANK, assessment.tank(), FuelAnswerTree::tank);
        return answers;
    }

    private static <A extends Answer> void answer(
            FigureTree answers, Question question, Outcome<A> outcome, BiConsumer<FigureTree, A> writer) {
        answers.withOutcome(question.word(), outcome, (tree, answer) -> {
            writer.accept(tree, answer);
            FigureTree working = tree.inner();
            EvidenceTree.working(working, answer.working());
            tree.with("working", working);
        });
    }
}
