package drivetrain.report;

import drivetrain.assessment.PullAnswer;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** Whether the engine holds a speed on a grade, and in which gear. */
public final class PullReport {

    private PullReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(PullAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(answer, units)));
        blocks.add(new Facts("detail", "", facts(answer)));
        if (!answer.rows().isEmpty()) {
            blocks.add(gears(answer));
        }
        return AnswerGround.report("pull", blocks, answer);
    }

    private static String sentence(PullAnswer answer, UnitSystem units) {
        String where = Figure.of(answer.speed(), Display.ROAD_SPEED).text(units)
                + (answer.load().grade().tangent() == 0.0
                        ? " on the level"
                        : " on a grade of " + answer.load().grade().figure().text(units));
        return answer.holding()
                .map(row -> row.gear().label() + " holds " + where + " with "
                        + Figure.percent(row.reserve(), 0).text(units)
                        + " of its driving force left over; " + engine(answer, units) + ".")
                .orElse("No gear holds " + where + ".");
    }

    private static String engine(PullAnswer answer, UnitSystem units) {
        return answer.power().atCrank().toWatts() < 0.0
                ? "the grade drives the vehicle, and engine or brakes have to hold it back"
                : "the engine gives "
                        + Figure.of(answer.power().atCrank(), Display.POWER).text(units);
    }

    private static List<Fact> facts(PullAnswer answer) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("roadSpeed", "road speed", Figure.of(answer.speed(), Display.ROAD_SPEED)));
        facts.add(Fact.of("grade", "grade", answer.load().grade().figure()));
        facts.add(Fact.of("surface", "surface", answer.load().surface().description()));
        facts.add(Fact.of(
                "rolling", "rolling resistance", Figure.of(answer.load().rolling(answer.speed()), Display.FORCE)));
        facts.add(Fact.of("drag", "drag", Figure.of(answer.load().drag(answer.speed()), Display.FORCE)));
        facts.add(Fact.of(
                "climb", "weight along the grade", Figure.of(answer.load().climb(), Display.FORCE)));
        facts.add(Fact.of(
                "resistance", "whole resistance", Figure.of(answer.load().total(answer.speed()), Display.FORCE)));
        facts.add(Fact.of(
                "powerAtWheels", "power at the wheels", Figure.of(answer.power().atWheels(), Display.POWER)));
        facts.add(Fact.of(
                "powerAtCrank",
                "power at the crank in " + answer.power().gear().label(),
                Figure.of(answer.power().atCrank(), Display.POWER)));
        return facts;
    }

    private static Grid gears(PullAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (PullAnswer.Row row : answer.rows()) {
            rows.add(List.of(
                    Cell.of(row.gear().label()),
                    Cell.of(Figure.of(row.engineSpeed(), Display.ROTATION)),
                    Cell.of(Figure.of(row.held().drive(), Display.FORCE)),
                    Cell.of(Figure.of(row.held().reserve(), Display.FORCE)),
                    Cell.of(row.held().steepest().map(grade -> grade.figure())),
                    Cell.of(row.held().holds() ? "yes" : "no")));
        }
        return new Grid(
                "gears",
                "Every gear that covers the speed, at full load",
                List.of(
                        Column.ofText("gear", "gear"),
                        Column.ofFigures("engineSpeed", "engine speed"),
                        Column.ofFigures("drivingForce", "driving force"),
                        Column.ofFigures("reserve", "left over"),
                        Column.ofFigures("gradeHeld", "steepest grade held"),
                        Column.ofText("holds", "holds it")),
                rows);
    }
}
