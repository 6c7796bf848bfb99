package drivetrain.report;

import drivetrain.assessment.TopAnswer;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import drivetrain.road.TopSpeed;
import java.util.ArrayList;
import java.util.List;

/** How fast the vehicle really goes. */
public final class TopReport {

    private TopReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(TopAnswer answer, UnitSystem units) {
        TopSpeed top = answer.fastest().top().orThrow();
        String limit = switch (top.limit()) {
            case POWER -> "where the engine has no more power than the road takes";
            case GEARING -> "where the engine reaches its highest speed";
            case LIMITER -> "where the speed limiter holds it";
        };
        String sentence = "The vehicle reaches "
                + Figure.of(top.speed(), Display.ROAD_SPEED).text(units) + " in "
                + answer.fastest().gear().label() + ", " + limit + ".";
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence));
        blocks.add(new Facts("detail", "", facts(answer, top)));
        blocks.add(gears(answer));
        return AnswerGround.report("top", blocks, answer);
    }

    private static List<Fact> facts(TopAnswer answer, TopSpeed top) {
        return List.of(
                Fact.of("topSpeed", "top speed", Figure.of(top.speed(), Display.ROAD_SPEED)),
                Fact.of("gear", "gear", answer.fastest().gear().label()),
                Fact.of("limit", "set by", top.limit().label()),
                new Fact(
                        "engineSpeed",
                        "engine speed",
                        Cell.of(answer.fastest().engineSpeed().map(speed -> Figure.of(speed, Display.ROTATION)))),
                new Fact(
                        "driveshaftSpeed",
                        "driveshaft speed",
                        Cell.of(answer.fastest().driveshaftSpeed().map(speed -> Figure.of(speed, Display.ROTATION)))),
                Fact.of("powerAtWheels", "power at the wheels", Figure.of(top.power(), Display.POWER)),
                Fact.of("surface", "surface", answer.load().surface().description()),
                Fact.of("airDensity", "air density", Figure.of(answer.load().airDensity(), Display.AIR_DENSITY)));
    }

    private static Grid gears(TopAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (TopAnswer.Row row : answer.rows()) {
            rows.add(List.of(
                    Cell.of(row.gear().label()),
                    Cell.of(row.top().map(top -> Figure.of(top.speed(), Display.ROAD_SPEED))),
                    Cell.of(row.top().map(top -> top.limit().label()).value().orElse("")),
                    Cell.of(row.engineSpeed().map(speed -> Figure.of(speed, Display.ROTATION))),
                    Cell.of(row.driveshaftSpeed().map(speed -> Figure.of(speed, Display.ROTATION)))));
        }
        return new Grid(
                "gears",
                "Top speed in every gear",
                List.of(
                        Column.ofText("gear", "gear"),
                        Column.ofFigures("topSpeed", "top speed"),
                        Column.ofText("limit", "set by"),
                        Column.ofFigures("engineSpeed", "engine speed"),
                        Column.ofFigures("driveshaftSpeed", "driveshaft speed")),
                rows);
    }
}
