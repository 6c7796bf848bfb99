package drivetrain.report;

import drivetrain.assessment.SprintAnswer;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import drivetrain.road.ShiftPoint;
import drivetrain.road.SpeedRun;
import java.util.ArrayList;
import java.util.List;

/** How fast the vehicle gathers speed from rest. */
public final class SprintReport {

    private SprintReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(SprintAnswer answer, UnitSystem units) {
        SpeedRun run = answer.run();
        String sentence =
                "From rest to " + Figure.of(run.speed(), Display.ROAD_SPEED).text(units) + " in "
                        + Figure.of(run.time(), Display.RUN_TIME).text(units) + " over "
                        + Figure.of(run.distance(), Display.RUN_LENGTH).text(units) + ".";
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence));
        blocks.add(new Facts("detail", "", facts(answer)));
        blocks.add(marks(run));
        if (!answer.shifts().isEmpty()) {
            blocks.add(shifts(answer));
        }
        return AnswerGround.report("sprint", blocks, answer);
    }

    private static List<Fact> facts(SprintAnswer answer) {
        return List.of(
                new Fact(
                        "quarterMile",
                        "quarter mile",
                        Cell.of(answer.quarterMile().map(run -> Figure.of(run.time(), Display.RUN_TIME)))),
                new Fact(
                        "quarterMileSpeed",
                        "speed there",
                        Cell.of(answer.quarterMile().map(run -> Figure.of(run.speed(), Display.ROAD_SPEED)))),
                Fact.of("driven", "driven by", answer.grip().layout().label()),
                Fact.of(
                        "grip",
                        "grip of the driven wheels",
                        Figure.of(answer.grip().force(), Display.FORCE)),
                Fact.of("surface", "surface", answer.load().surface().description()));
    }

    private static Grid marks(SpeedRun run) {
        List<List<Cell>> rows = new ArrayList<>();
        for (SpeedRun.Mark mark : run.marks()) {
            rows.add(List.of(
                    Cell.of(Figure.of(mark.speed(), Display.ROAD_SPEED)),
                    Cell.of(Figure.of(mark.time(), Display.RUN_TIME)),
                    Cell.of(Figure.of(mark.distance(), Display.RUN_LENGTH))));
        }
        return new Grid(
                "marks",
                "On the way",
                List.of(
                        Column.ofFigures("speed", "speed"),
                        Column.ofFigures("time", "time"),
                        Column.ofFigures("distance", "distance")),
                rows);
    }

    private static Grid shifts(SprintAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (ShiftPoint shift : answer.shifts()) {
            rows.add(List.of(
                    Cell.of(shift.from()),
                    Cell.of(shift.to()),
                    Cell.of(Figure.of(shift.speed(), Display.ROAD_SPEED)),
                    Cell.of(shift.crossing() ? "the next gear pulls as hard" : "the engine's highest speed")));
        }
        return new Grid(
                "shifts",
                "Best upshifts",
                List.of(
                        Column.ofText("from", "from"),
                        Column.ofText("to", "to"),
                        Column.ofFigures("speed", "at"),
                        Column.ofText("why", "because")),
                rows);
    }
}
