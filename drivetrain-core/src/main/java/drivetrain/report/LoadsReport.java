package drivetrain.report;

import drivetrain.assessment.LoadsAnswer;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import drivetrain.road.PartLoad;
import java.util.ArrayList;
import java.util.List;

/** The greatest torque in every part, and the weakest link. */
public final class LoadsReport {

    private LoadsReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(LoadsAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(answer, units)));
        blocks.add(new Facts(
                "detail",
                "",
                List.of(
                        new Fact(
                                "inputTorque",
                                "torque at the transmission's input",
                                Cell.of(answer.input().map(torque -> Figure.of(torque, Display.TORQUE)))),
                        Fact.of("surface", "surface", answer.surface().description()))));
        blocks.add(parts(answer));
        return AnswerGround.report("loads", blocks, answer);
    }

    private static String sentence(LoadsAnswer answer, UnitSystem units) {
        return answer.path()
                .weakest()
                .map(part -> "The weakest link is the " + part.part() + ": " + part.phrase(units) + ", which is "
                        + Figure.percent(part.used().orThrow(), 0).text(units) + " of its rating of "
                        + Figure.of(part.rating().orElseThrow(), Display.TORQUE).text(units) + ".")
                .orElse("No part has a torque rating, so that the weakest link cannot be named; "
                        + "the table shows what each part sees.");
    }

    private static Grid parts(LoadsAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (PartLoad part : answer.path().parts()) {
            rows.add(List.of(
                    Cell.of(part.part()),
                    Cell.of(part.gear()),
                    Cell.of(part.engineLimited().map(torque -> Figure.of(torque, Display.TORQUE))),
                    Cell.of(part.slipLimited().map(torque -> Figure.of(torque, Display.TORQUE))),
                    Cell.of(part.governing().map(torque -> Figure.of(torque, Display.TORQUE))),
                    Cell.of(part.limit().map(PartLoad.Limit::label).orElse("")),
                    part.rating()
                            .map(rating -> Cell.of(Figure.of(rating, Display.TORQUE)))
                            .orElseGet(Cell::empty)));
        }
        return new Grid(
                "parts",
                "Torque in every part",
                List.of(
                        Column.ofText("part", "part"),
                        Column.ofText("gear", "worst in"),
                        Column.ofFigures("engineLimited", "by the engine"),
                        Column.ofFigures("slipLimited", "by tire slip"),
                        Column.ofFigures("torque", "at most"),
                        Column.ofText("limit", "set by"),
                        Column.ofFigures("rating", "rating")),
                rows);
    }
}
