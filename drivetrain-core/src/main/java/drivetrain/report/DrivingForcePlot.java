package drivetrain.report;

import drivetrain.assessment.DrivingForceAnswer;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.report.LinePlot.Curve;
import drivetrain.report.LinePlot.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Driving force or power in every gear of a range against what the road takes. */
public final class DrivingForcePlot {

    private static final char ROAD = 'r';

    private DrivingForcePlot() {}

    /**
     * Draws forces.
     *
     * @param answer the curves
     * @return the report
     */
    public static Report ofForce(DrivingForceAnswer answer) {
        return report(
                "plotForce",
                answer,
                "Driving force in each gear against the resistance (r)",
                "force at the wheels",
                point -> Figure.of(point.force(), Display.FORCE));
    }

    /**
     * Draws powers.
     *
     * @param answer the curves
     * @return the report
     */
    public static Report ofPower(DrivingForceAnswer answer) {
        return report(
                "plotPower",
                answer,
                "Power at the wheels in each gear against what the road takes (r)",
                "power at the wheels",
                point -> Figure.of(point.power(), Display.POWER));
    }

    private static Report report(
            String question,
            DrivingForceAnswer answer,
            String title,
            String upwards,
            Function<DrivingForceAnswer.Point, Figure> height) {
        List<Curve> curves = new ArrayList<>();
        for (DrivingForceAnswer.Curve gear : answer.gears()) {
            curves.add(
                    new Curve(GearMark.of(gear.gear().number()), gear.gear().label(), points(gear.points(), height)));
        }
        curves.add(new Curve(ROAD, "road load on the level", points(answer.resistance(), height)));
        List<Block> blocks = new ArrayList<>();
        blocks.add(Drawing.of(new LinePlot(title, "road speed", upwards, curves)));
        return AnswerGround.report(question, blocks, answer);
    }

    private static List<Point> points(
            List<DrivingForceAnswer.Point> points, Function<DrivingForceAnswer.Point, Figure> height) {
        return points.stream()
                .map(point -> new Point(Figure.of(point.speed(), Display.ROAD_SPEED), height.apply(point)))
                .toList();
    }
}
