package drivetrain.report;

import drivetrain.assessment.CriticalSpeedAnswer;
import drivetrain.driveshaft.BeamMode;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.report.LinePlot.Curve;
import drivetrain.report.LinePlot.Point;
import java.util.ArrayList;
import java.util.List;

/** How a driveshaft bends in its lowest modes, drawn along its length from the transfer case to the axle. */
public final class ModesPlot {

    private ModesPlot() {}

    /**
     * Draws the modes of one shaft.
     *
     * @param answer the answer that holds the shaft
     * @param shaft the shaft
     * @return the report
     */
    public static Report of(CriticalSpeedAnswer answer, CriticalSpeedAnswer.Shaft shaft) {
        List<Curve> curves = new ArrayList<>();
        for (BeamMode mode : shaft.critical().modes()) {
            char mark = (char) ('1' + curves.size());
            List<Point> points = new ArrayList<>();
            for (BeamMode.Point point : mode.shape()) {
                points.add(new Point(Figure.of(point.place(), Display.DIMENSION), Figure.plain(point.deflection(), 2)));
            }
            curves.add(new Curve(mark, mode.speed().format(AngularSpeed.RPM, 0), points));
        }
        LinePlot plot = new LinePlot(
                "Modes of the " + shaft.place().label() + " shaft, from the transfer case to the axle",
                "place along the shaft",
                "deflection, greatest 1",
                curves);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Drawing.of(plot));
        return AnswerGround.report("plotModes", blocks, answer);
    }
}
