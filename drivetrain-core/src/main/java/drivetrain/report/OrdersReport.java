package drivetrain.report;

import drivetrain.assessment.OrdersAnswer;
import drivetrain.driveshaft.VibrationOrder;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** How often each turning part shakes at a road speed. */
public final class OrdersReport {

    private OrdersReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(OrdersAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(
                "At " + Figure.of(answer.speed(), Display.ROAD_SPEED).text(units) + " in "
                        + answer.gear().label() + ", with clutch or converter locked, these parts shake this often."));
        blocks.add(grid(answer));
        if (answer.cylinders().isEmpty()) {
            blocks.add(
                    new Sentence(
                            "firing",
                            "The firing of the engine is not evaluated because its cylinders are not known; add, for example, \"with 8 cylinders\"."));
        }
        blocks.add(new Facts("rolling", "", RollingFacts.of(answer.rolling())));
        return AnswerGround.report("orders", blocks, answer);
    }

    private static Grid grid(OrdersAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (VibrationOrder order : answer.orders()) {
            rows.add(List.of(
                    Cell.of(name(order)),
                    Cell.of(Figure.of(order.frequency(), Display.FREQUENCY)),
                    Cell.of(Figure.of(order.turning(), Display.ROTATION)),
                    Cell.of(order.cause())));
        }
        return new Grid(
                "orders",
                "",
                List.of(
                        Column.ofText("vibration", "vibration"),
                        Column.ofFigures("frequency", "frequency"),
                        Column.ofFigures("speed", "turns"),
                        Column.ofText("cause", "what shakes")),
                rows);
    }

    /** The part with its order, which no two rows have in common. */
    static String name(VibrationOrder order) {
        return order.part() + ", order " + orderFigure(order).text(UnitSystem.METRIC);
    }

    /** An order is shown whole where it is whole: second order, not order 2.0. */
    static Figure orderFigure(VibrationOrder order) {
        boolean whole = order.order() == Math.rint(order.order());
        return Figure.plain(order.order(), whole ? 0 : 1);
    }
}
