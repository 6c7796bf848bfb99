package drivetrain.report;

import drivetrain.assessment.TubesAnswer;
import drivetrain.driveshaft.TubeSizing;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Which stock tube a driveshaft needs. */
public final class TubesReport {

    private static final Display<Length> LONGEST = new Display<>(Length.INCH, 1, Length.MILLIMETER, 0);

    private TubesReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(TubesAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(answer, units)));
        blocks.add(grid(answer));
        return AnswerGround.report("tubes", blocks, answer);
    }

    private static String sentence(TubesAnswer answer, UnitSystem units) {
        TubeSizing sizing = answer.sizing();
        String task = Figure.of(sizing.speed(), Display.ROTATION).text(units)
                + (answer.fastest().where().equals("asked")
                        ? ""
                        : " (" + answer.fastest().where() + ")")
                + " at " + Figure.of(sizing.length(), LONGEST).text(units);
        return sizing.smallest()
                .map(row -> "The smallest stock tube for " + task + " is " + size(row, units) + " of "
                        + row.stock().metal().name() + ".")
                .orElse("No stock tube will do for " + task + "; a center bearing makes two shorter pieces.");
    }

    private static String size(TubeSizing.Row row, UnitSystem units) {
        return Figure.of(row.stock().tube().diameter(), Display.DIMENSION).text(units) + " x "
                + Figure.of(row.stock().tube().wall(), Display.WALL).text(units);
    }

    private static Grid grid(TubesAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (TubeSizing.Row row : answer.sizing().rows()) {
            rows.add(List.of(
                    Cell.of(row.stock().name()),
                    Cell.of(Figure.of(row.critical(), Display.ROTATION)),
                    Cell.of(Figure.of(row.allowed(), Display.ROTATION)),
                    Cell.of(Figure.of(row.longest(), LONGEST)),
                    Cell.of(Figure.of(row.mass(), MASS)),
                    Cell.of(row.willDo() ? "will do" : "too fast")));
        }
        return new Grid(
                "tubes",
                "",
                List.of(
                        Column.ofText("tube", "tube"),
                        Column.ofFigures("critical", "critical"),
                        Column.ofFigures("allowed", "allowed"),
                        Column.ofFigures("longest", "longest"),
                        Column.ofFigures("mass", "mass"),
                        Column.ofText("verdict", "verdict")),
                rows);
    }

    private static final Display<drivetrain.quantity.Mass> MASS =
            new Display<>(drivetrain.quantity.Mass.POUND, 1, drivetrain.quantity.Mass.KILOGRAM, 1);
}
