package drivetrain.report;

import drivetrain.assessment.TireAnswer;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** The tire: its size, how far it rolls in a turn, and whether it carries its axle. */
public final class TireReport {

    private TireReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(TireAnswer answer, UnitSystem units) {
        String sentence = answer.rolling()
                .fold(
                        rolling -> "In one turn the tire rolls "
                                + Figure.of(rolling.circumference(), Display.DIMENSION)
                                        .text(units) + " ("
                                + rolling.basis().label() + ").",
                        reason -> "How far the tire rolls in a turn is not evaluated because " + reason + ".");
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence));
        blocks.add(new Facts("detail", "", facts(answer)));
        return AnswerGround.report("tire", blocks, answer);
    }

    private static List<Fact> facts(TireAnswer answer) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("tire", "tire", answer.tire().text()));
        if (!answer.frontTire().equals(answer.tire())) {
            facts.add(Fact.of("frontTire", "front tire", answer.frontTire().text()));
        }
        facts.add(new Fact(
                "overallDiameter",
                "overall diameter",
                Cell.of(answer.overallDiameter().map(overall -> Figure.of(overall.diameter(), Display.DIMENSION)))));
        answer.overallDiameter()
                .value()
                .ifPresent(overall -> facts.add(Fact.of(
                        "diameterBasis", "diameter basis", overall.basis().label())));
        answer.rolling().value().ifPresent(rolling -> facts.addAll(RollingFacts.of(rolling)));
        return facts;
    }
}
