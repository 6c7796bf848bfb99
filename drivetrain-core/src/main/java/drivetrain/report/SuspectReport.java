package drivetrain.report;

import drivetrain.assessment.SuspectAnswer;
import drivetrain.driveshaft.Suspect;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Which part makes a vibration that was measured. */
public final class SuspectReport {

    private SuspectReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentences
     * @return the report
     */
    public static Report of(SuspectAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(answer, units)));
        if (!answer.suspects().isEmpty()) {
            blocks.add(grid(answer));
        }
        if (answer.needsAnotherGear()) {
            blocks.add(new Sentence(
                    "tellApart",
                    "To tell engine from driveline, drive the same road speed in another gear or roll in neutral: what follows the engine changes, the rest "
                            + "stays."));
        }
        if (answer.orders().cylinders().isEmpty()) {
            blocks.add(
                    new Sentence(
                            "firing",
                            "The firing of the engine is not among the parts looked at; add, for example, \"with 8 cylinders\"."));
        }
        return AnswerGround.report("suspect", blocks, answer);
    }

    private static String sentence(SuspectAnswer answer, UnitSystem units) {
        String measured = Figure.of(answer.measured(), Display.FREQUENCY).text(units) + " at "
                + Figure.of(answer.orders().speed(), Display.ROAD_SPEED).text(units);
        if (answer.suspects().isEmpty()) {
            Suspect nearest = answer.nearest();
            return "Nothing that turns fits " + measured + "; the nearest is " + words(nearest) + " at "
                    + Figure.of(nearest.order().frequency(), Display.FREQUENCY).text(units)
                    + ". Look at what swings without turning, or measure again.";
        }
        Suspect first = answer.suspects().get(0);
        return "What fits " + measured + " best is " + words(first) + ": "
                + first.order().cause() + ".";
    }

    private static String words(Suspect suspect) {
        return "order " + OrdersReport.orderFigure(suspect.order()).text(UnitSystem.METRIC) + " of the "
                + suspect.order().part();
    }

    private static Grid grid(SuspectAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Suspect suspect : answer.suspects()) {
            rows.add(List.of(
                    Cell.of(OrdersReport.name(suspect.order())),
                    Cell.of(Figure.of(suspect.order().frequency(), Display.FREQUENCY)),
                    Cell.of(Figure.percent(suspect.mismatch(), 1)),
                    Cell.of(suspect.order().cause())));
        }
        return new Grid(
                "suspects",
                "",
                List.of(
                        Column.ofText("vibration", "vibration"),
                        Column.ofFigures("frequency", "frequency"),
                        Column.ofFigures("off", "off by"),
                        Column.ofText("cause", "what shakes")),
                rows);
    }
}
