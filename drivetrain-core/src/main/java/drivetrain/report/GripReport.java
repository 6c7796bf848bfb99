package drivetrain.report;

import drivetrain.assessment.GripAnswer;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** What the tires put on the ground, and how steep that climbs. */
public final class GripReport {

    private GripReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(GripAnswer answer, UnitSystem units) {
        GripAnswer.Row best = answer.rows().get(answer.rows().size() - 1);
        String start =
                "On " + answer.surface().description() + " (" + best.layout().label() + ")";
        String sentence = best.steepest()
                .fold(
                        grade -> start + " the tires hold a grade of "
                                + grade.figure().text(units) + ".",
                        reason -> start + " the tires climb nothing: " + reason + ".");
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence));
        blocks.add(new Facts("detail", "", facts(answer)));
        blocks.add(layouts(answer));
        return AnswerGround.report("grip", blocks, answer);
    }

    private static List<Fact> facts(GripAnswer answer) {
        return List.of(
                Fact.of("surface", "surface", answer.surface().description()),
                Fact.of(
                        "sliding",
                        "friction, sliding",
                        Figure.plain(answer.surface().sliding(), 2)),
                Fact.of("peak", "friction, peak", Figure.plain(answer.surface().peak(), 2)),
                new Fact(
                        "engineForce",
                        "driving force of the engine in the shortest gear",
                        Cell.of(answer.engine().map(limit -> Figure.of(limit.force(), Display.FORCE)))),
                new Fact(
                        "engineGrade",
                        "grade that the engine holds in it",
                        Cell.of(answer.engine()
                                .then(GripAnswer.EngineLimit::steepest)
                                .map(grade -> grade.figure()))));
    }

    private static Grid layouts(GripAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (GripAnswer.Row row : answer.rows()) {
            rows.add(List.of(
                    Cell.of(row.layout().label()),
                    Cell.of(Figure.of(row.sliding(), Display.FORCE)),
                    Cell.of(Figure.of(row.peak(), Display.FORCE)),
                    Cell.of(row.steepest().map(grade -> grade.figure()))));
        }
        return new Grid(
                "layouts",
                "What the tires hold",
                List.of(
                        Column.ofText("layout", "driven by"),
                        Column.ofFigures("force", "force to count on"),
                        Column.ofFigures("peakForce", "force at its peak"),
                        Column.ofFigures("steepest", "steepest grade")),
                rows);
    }
}
