package drivetrain.report;

import drivetrain.assessment.WheelTorqueAnswer;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** What the engine can send to the wheels in each gear. */
public final class WheelTorqueReport {

    private WheelTorqueReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(WheelTorqueAnswer answer, UnitSystem units) {
        WheelTorqueAnswer.Row strongest = strongest(answer);
        String sentence = "In " + strongest.gear().label() + " the engine can send "
                + Figure.of(strongest.wheels().total(), Display.TORQUE).text(units)
                + " to all driven wheels together; " + strongest.wheels().statement() + ".";
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence));
        blocks.add(new Facts("engine", "", facts(answer)));
        blocks.add(grid(answer));
        return AnswerGround.report("torque", blocks, answer);
    }

    /** The forward gear with the greatest wheel torque. */
    private static WheelTorqueAnswer.Row strongest(WheelTorqueAnswer answer) {
        WheelTorqueAnswer.Row strongest = answer.rows().get(0);
        for (WheelTorqueAnswer.Row row : answer.rows()) {
            boolean stronger =
                    row.wheels().total().isGreaterThan(strongest.wheels().total());
            if (!row.gear().reverse() && (strongest.gear().reverse() || stronger)) {
                strongest = row;
            }
        }
        return strongest;
    }

    private static List<Fact> facts(WheelTorqueAnswer answer) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(
                "engineTorque",
                "greatest engine torque",
                Figure.of(answer.peak().torque(), Display.TORQUE)));
        facts.add(Fact.of(
                "engineSpeed", "at engine speed", Figure.of(answer.peak().speed(), Display.ROTATION)));
        answer.stallMultiplication()
                .ifPresent(ratio -> facts.add(Fact.of(
                        "stallTorqueRatio",
                        "converter torque ratio at stall, not in the table",
                        Figure.plain(ratio, 2))));
        return facts;
    }

    private static Grid grid(WheelTorqueAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (WheelTorqueAnswer.Row row : answer.rows()) {
            rows.add(List.of(
                    Cell.of(row.gear().label()),
                    Cell.of(Figure.plain(row.gear().totalRatio(), 3)),
                    Cell.of(Figure.percent(row.gear().efficiency(), 0)),
                    Cell.of(Figure.of(row.driveshaft(), Display.TORQUE)),
                    Cell.of(Figure.of(row.halfShafts(), Display.TORQUE)),
                    Cell.of(Figure.of(row.wheels().total(), Display.TORQUE)),
                    Cell.of(Figure.of(row.wheels().greatestRear(), Display.TORQUE)),
                    Cell.of(Figure.of(row.wheels().greatestFront(), Display.TORQUE))));
        }
        return new Grid(
                "gears",
                "",
                List.of(
                        Column.ofText("gear", "gear"),
                        Column.ofFigures("totalRatio", "total ratio"),
                        Column.ofFigures("efficiency", "efficiency"),
                        Column.ofFigures("driveshaftTorque", "driveshafts"),
                        Column.ofFigures("halfShaftTorque", "half-shafts"),
                        Column.ofFigures("wheelTorque", "all wheels"),
                        Column.ofFigures("greatestRear", "most at rear axle"),
                        Column.ofFigures("greatestFront", "most at front axle")),
                rows);
    }
}
