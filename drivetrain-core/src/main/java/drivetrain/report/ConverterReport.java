package drivetrain.report;

import drivetrain.assessment.ConverterAnswer;
import drivetrain.gearing.ConverterMatch;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** The torque converter behind the engine. */
public final class ConverterReport {

    private ConverterReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(ConverterAnswer answer, UnitSystem units) {
        ConverterMatch.Point stall = answer.match().stall();
        String sentence = "At stall the engine turns "
                + Figure.of(stall.pumpSpeed(), Display.ROTATION).text(units)
                + " and the converter sends "
                + Figure.of(stall.turbineTorque(), Display.TORQUE).text(units)
                + " into the transmission, while "
                + Figure.of(stall.heat(), Display.POWER).text(units)
                + " heat its oil.";
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence));
        blocks.add(new Facts("detail", "", facts(answer, stall)));
        blocks.add(fullLoad(answer));
        return AnswerGround.report("converter", blocks, answer);
    }

    private static List<Fact> facts(ConverterAnswer answer, ConverterMatch.Point stall) {
        return List.of(
                Fact.of("stallSpeed", "stall speed", Figure.of(stall.pumpSpeed(), Display.ROTATION)),
                Fact.of("engineTorque", "engine torque there", Figure.of(stall.pumpTorque(), Display.TORQUE)),
                Fact.of(
                        "stallTorqueRatio",
                        "torque ratio at stall",
                        Figure.plain(answer.match().curve().stallTorqueRatio(), 2)),
                Fact.of(
                        "capacity",
                        "capacity factor at stall",
                        Figure.of(answer.match().curve().points().get(0).capacity(), Display.CAPACITY)),
                Fact.of("heat", "heat at stall", Figure.of(stall.heat(), Display.POWER)),
                new Fact(
                        "creepForce",
                        "force at the wheels at idle in 1st high, held",
                        Cell.of(answer.creepForce().map(force -> Figure.of(force, Display.FORCE)))),
                new Fact(
                        "creepSpeed",
                        "speed at idle on the level",
                        Cell.of(answer.creepSpeed().map(speed -> Figure.of(speed, Display.CRAWL_SPEED)))),
                new Fact(
                        "openCruise",
                        "engine speed at the order's cruise, converter open",
                        Cell.of(answer.cruise().map(point -> Figure.of(point.pumpSpeed(), Display.ROTATION)))),
                new Fact(
                        "openSpeedRatio",
                        "speed ratio there",
                        Cell.of(answer.cruise().map(point -> Figure.plain(point.speedRatio(), 3)))));
    }

    private static Grid fullLoad(ConverterAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (ConverterMatch.Point point : answer.match().atCurvePoints()) {
            rows.add(List.of(
                    Cell.of(Figure.plain(point.speedRatio(), 2)),
                    Cell.of(Figure.of(point.pumpSpeed(), Display.ROTATION)),
                    Cell.of(Figure.of(point.turbineSpeed(), Display.ROTATION)),
                    Cell.of(Figure.of(point.turbineTorque(), Display.TORQUE)),
                    Cell.of(Figure.of(point.heat(), Display.POWER))));
        }
        return new Grid(
                "fullLoad",
                "At full load",
                List.of(
                        Column.ofFigures("speedRatio", "speed ratio"),
                        Column.ofFigures("engineSpeed", "engine speed"),
                        Column.ofFigures("turbineSpeed", "turbine speed"),
                        Column.ofFigures("turbineTorque", "turbine torque"),
                        Column.ofFigures("heat", "heat")),
                rows);
    }
}
