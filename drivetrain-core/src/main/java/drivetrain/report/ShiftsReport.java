package drivetrain.report;

import drivetrain.assessment.ShiftAnswer;
import drivetrain.gearing.Upshift;
import drivetrain.gearing.UpshiftTable;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Steps between the gears and engine speed after each upshift. */
public final class ShiftsReport {

    private ShiftsReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(ShiftAnswer answer, UnitSystem units) {
        UpshiftTable high = answer.high();
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(high, units)));
        blocks.add(grid(high));
        for (int i = 0; i < answer.overlap().places().size(); i++) {
            String text = answer.overlap().places().get(i).statement() + ".";
            blocks.add(new Sentence("overlap" + (i + 1), Character.toUpperCase(text.charAt(0)) + text.substring(1)));
        }
        return AnswerGround.report("shifts", blocks, answer);
    }

    private static String sentence(UpshiftTable high, UnitSystem units) {
        String spread = "The gears of " + high.range().label() + " range spread over "
                + DecimalText.fixed(high.spread(), 2) + " to 1";
        if (high.shifts().isEmpty()) {
            return spread + ".";
        }
        Upshift widest = high.shifts().get(0);
        for (Upshift shift : high.shifts()) {
            widest = shift.step() > widest.step() ? shift : widest;
        }
        return spread + "; the widest step is from " + widest.from().label() + " to "
                + widest.to().label() + ", where the engine falls from "
                + rotation(widest, true).text(units) + " to "
                + rotation(widest, false).text(units) + ".";
    }

    private static Figure rotation(Upshift shift, boolean before) {
        return Figure.of(before ? shift.before() : shift.after(), Display.ROTATION);
    }

    private static Grid grid(UpshiftTable high) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Upshift shift : high.shifts()) {
            rows.add(List.of(
                    Cell.of(shift.from().label()),
                    Cell.of(shift.to().label()),
                    Cell.of(Figure.plain(shift.step(), 3)),
                    Cell.of(rotation(shift, true)),
                    Cell.of(rotation(shift, false))));
        }
        return new Grid(
                "shifts",
                "",
                List.of(
                        Column.ofText("from", "from"),
                        Column.ofText("to", "to"),
                        Column.ofFigures("step", "step"),
                        Column.ofFigures("before", "engine speed before"),
                        Column.ofFigures("after", "engine speed after")),
                rows);
    }
}
