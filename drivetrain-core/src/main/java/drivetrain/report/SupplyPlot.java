package drivetrain.report;

import drivetrain.assessment.SupplyAnswer;
import drivetrain.finding.Outcome;
import drivetrain.fuel.SupplyCurves;
import drivetrain.fuel.SupplyPoint;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.report.LinePlot.Curve;
import drivetrain.report.LinePlot.Point;
import java.util.ArrayList;
import java.util.List;

/** What the engine burns and what the supply delivers over the engine speed; and the pump against its lines. */
public final class SupplyPlot {

    private SupplyPlot() {}

    /**
     * Makes the report.
     *
     * @param answer the answer; it has rows, and its capacity is known
     * @param curves the pump curve and the system curve
     * @return the report, or why there is nothing to draw
     */
    public static Outcome<Report> of(SupplyAnswer answer, Outcome<SupplyCurves> curves) {
        if (answer.rows().isEmpty()) {
            return Outcome.notEvaluated("the engine's torque is not known over its speed");
        }
        return answer.capacity().then(capacity -> curves.map(both -> report(answer, capacity, both)));
    }

    private static Report report(SupplyAnswer answer, SupplyPoint capacity, SupplyCurves curves) {
        List<Point> burned = new ArrayList<>();
        List<Point> delivered = new ArrayList<>();
        for (SupplyAnswer.Row row : answer.rows()) {
            Figure speed = Figure.of(row.speed(), Display.ROTATION);
            burned.add(new Point(speed, Figure.of(row.demand(), Display.VOLUME_FLOW)));
            delivered.add(new Point(speed, Figure.of(capacity.flow(), Display.VOLUME_FLOW)));
        }
        LinePlot overSpeed = new LinePlot(
                "Fuel burned and delivered",
                "engine speed",
                "flow",
                List.of(new Curve('b', "burned", burned), new Curve('d', "delivered", delivered)));
        LinePlot pump = new LinePlot(
                "Pump and lines",
                "flow",
                "pressure added",
                List.of(
                        new Curve('p', "pump", points(curves.pump())),
                        new Curve('s', "lines and regulator", points(curves.system()))));
        List<Block> blocks = new ArrayList<>();
        blocks.add(Drawing.of(overSpeed));
        blocks.add(new Drawing("pumpPlot", pump));
        return AnswerGround.report("plotSupply", blocks, answer);
    }

    private static List<Point> points(List<SupplyCurves.Point> points) {
        return points.stream()
                .map(point -> new Point(
                        Figure.of(point.flow(), Display.VOLUME_FLOW),
                        Figure.of(point.pressure(), Display.GAUGE_PRESSURE)))
                .toList();
    }
}
