package drivetrain.report;

import drivetrain.assessment.TravelAnswer;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.ShaftTravel;
import drivetrain.driveshaft.TravelPoint;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.report.LinePlot.Curve;
import drivetrain.report.LinePlot.Point;
import java.util.ArrayList;
import java.util.List;

/** Joint angles and slip of a driveshaft against the travel of its axle, both wheels together. */
public final class TravelPlot {

    private static final int HEIGHTS = 41;

    private TravelPlot() {}

    /**
     * Draws one shaft.
     *
     * @param answer the answer
     * @param place which shaft; it must be among those answered for
     * @return the report
     */
    public static Report of(TravelAnswer answer, ShaftPlace place) {
        ShaftTravel travel = answer.travels().stream()
                .filter(candidate -> candidate.installed().place() == place)
                .findFirst()
                .orElseThrow();
        List<TravelPoint> points = travel.together(HEIGHTS);
        List<Curve> joints = new ArrayList<>();
        for (int joint = 0; joint < travel.widest().size(); joint++) {
            int index = joint;
            joints.add(new Curve(
                    (char) ('1' + joint),
                    "joint " + (joint + 1),
                    points.stream()
                            .map(point -> new Point(
                                    raised(point), Figure.of(point.angles().get(index), Display.JOINT_ANGLE)))
                            .toList()));
        }
        Length ride = travel.ride().length();
        Curve slip = new Curve(
                's',
                "slip",
                points.stream()
                        .map(point -> new Point(
                                raised(point), Figure.of(point.length().minus(ride), Display.DIMENSION)))
                        .toList());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Drawing(
                "angles",
                new LinePlot(
                        "Joint angles of the " + place.label() + " shaft",
                        "both wheels raised",
                        "joint angle",
                        joints)));
        blocks.add(new Drawing(
                "slip",
                new LinePlot(
                        "Slip of the " + place.label() + " shaft from ride height",
                        "both wheels raised",
                        "drawn apart",
                        List.of(slip))));
        return AnswerGround.report("plotTravel", blocks, answer);
    }

    private static Figure raised(TravelPoint point) {
        return Figure.of(point.left(), Display.DIMENSION);
    }
}
