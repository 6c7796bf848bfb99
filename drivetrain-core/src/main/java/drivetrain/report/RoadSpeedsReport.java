package drivetrain.report;

import drivetrain.assessment.RoadSpeedsAnswer;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Road speed in every gear at one engine speed. */
public final class RoadSpeedsReport {

    private RoadSpeedsReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(RoadSpeedsAnswer answer, UnitSystem units) {
        RoadSpeedsAnswer.Row highest = answer.rows().get(answer.rows().size() - 1);
        String sentence =
                "At " + Figure.of(answer.engineSpeed(), Display.ROTATION).text(units) + " the vehicle rolls "
                        + Figure.of(highest.roadSpeed(), Display.ROAD_SPEED).text(units) + " in "
                        + highest.gear().label() + ", if the engine can pull it.";
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence));
        blocks.add(grid(answer));
        blocks.add(new Facts("rolling", "", RollingFacts.of(answer.rolling())));
        return AnswerGround.report("roadSpeeds", blocks, answer);
    }

    private static Grid grid(RoadSpeedsAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (RoadSpeedsAnswer.Row row : answer.rows()) {
            rows.add(List.of(
                    Cell.of(row.gear().label()),
                    Cell.of(Figure.plain(row.gear().totalRatio(), 3)),
                    Cell.of(Figure.of(row.roadSpeed(), Display.ROAD_SPEED)),
                    Cell.of(Figure.of(row.driveshaftSpeed(), Display.ROTATION))));
        }
        return new Grid(
                "gears",
                "",
                List.of(
                        Column.ofText("gear", "gear"),
                        Column.ofFigures("totalRatio", "total ratio"),
                        Column.ofFigures("roadSpeed", "road speed"),
                        Column.ofFigures("driveshaftSpeed", "driveshaft speed")),
                rows);
    }
}
