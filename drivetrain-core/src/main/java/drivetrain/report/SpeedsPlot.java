package drivetrain.report;

import drivetrain.assessment.RoadSpeedsAnswer;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.Range;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.report.LinePlot.Curve;
import drivetrain.report.LinePlot.Point;
import java.util.ArrayList;
import java.util.List;

/** Road speed against engine speed for the forward gears of one range: straight lines, since nothing slips. */
public final class SpeedsPlot {

    private SpeedsPlot() {}

    /**
     * Draws the gears.
     *
     * @param slow the road speeds at the left edge
     * @param fast the road speeds at the right edge, of the same gears
     * @param range the range
     * @return the report
     */
    public static Report of(RoadSpeedsAnswer slow, RoadSpeedsAnswer fast, Range range) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < fast.rows().size(); i++) {
            DriveGear gear = fast.rows().get(i).gear();
            if (!gear.reverse() && !gear.overdrive() && gear.range() == range) {
                curves.add(
                        new Curve(GearMark.of(gear.number()), gear.label(), List.of(point(slow, i), point(fast, i))));
            }
        }
        LinePlot plot = new LinePlot("Road speed in each gear", "engine speed", "road speed", curves);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Drawing.of(plot));
        return AnswerGround.report("plotSpeeds", blocks, fast);
    }

    private static Point point(RoadSpeedsAnswer answer, int row) {
        return new Point(
                Figure.of(answer.engineSpeed(), Display.ROTATION),
                Figure.of(answer.rows().get(row).roadSpeed(), Display.ROAD_SPEED));
    }
}
