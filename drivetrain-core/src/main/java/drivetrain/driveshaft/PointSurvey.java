package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A line measured by points in the vehicle's axes.
 *
 * @param output the flange of the transfer case
 * @param bearings the joint center at the center bearing, where there is one
 * @param pinion the flange of the axle
 */
public record PointSurvey(Flange output, List<Position> bearings, Flange pinion) implements LineSurvey {

    private static final Assumption PARALLEL = Assumption.flagged(
            "plan view of output and pinion",
            "output and pinion are taken as parallel to the centerline in plan view; measure their turn where an engine or axle stands askew",
            Source.commonPractice("driveline built along the vehicle"));

    /**
     * Copies the points and checks their count.
     *
     * @throws drivetrain.refusal.RefusedException if there is more than one center bearing
     */
    public PointSurvey {
        bearings = List.copyOf(bearings);
        if (bearings.size() > 1) {
            throw Refusal.of("shaft line", bearings.size() + " bearings", "is more than is known here")
                    .allowing("at most one center bearing")
                    .asException();
        }
    }

    @Override
    public ShaftLine line(ShaftPlace place) {
        Vector3D out = output.axis().vector(place);
        Vector3D in = pinion.axis().vector(place);
        List<Vector3D> centers = new ArrayList<>();
        centers.add(output.point().vector().add(output.toJoint().toMeters(), out));
        bearings.forEach(point -> centers.add(point.vector()));
        centers.add(pinion.point().vector().subtract(pinion.toJoint().toMeters(), in));
        double along = centers.get(centers.size() - 1).getX() - centers.get(0).getX();
        if (along * place.forward() < 0.0) {
            throw Refusal.of(
                            "shaft line",
                            "",
                            "the pinion lies on the wrong side of the output for a " + place.label() + " shaft")
                    .allowing(
                            "x forward: less at the pinion than at the output for a rear shaft, more for a front shaft")
                    .asException();
        }
        return ShaftLine.of(centers, out, in);
    }

    @Override
    public int jointCount() {
        return bearings.size() + 2;
    }

    @Override
    public List<SurveyReading> readings() {
        List<SurveyReading> readings = new ArrayList<>();
        readings.add(new SurveyReading(
                "slope of the output", true, error -> new PointSurvey(turned(output, error), bearings, pinion)));
        readings.add(new SurveyReading(
                "slope of the pinion", true, error -> new PointSurvey(output, bearings, turned(pinion, error))));
        readings.add(new SurveyReading(
                "height of the pinion", false, error -> new PointSurvey(output, bearings, moved(pinion, 0.0, error))));
        readings.add(new SurveyReading(
                "side of the pinion", false, error -> new PointSurvey(output, bearings, moved(pinion, error, 0.0))));
        return readings;
    }

    private static Flange turned(Flange flange, double error) {
        Angle down = Angle.ofRadians(flange.axis().down().toRadians() + error);
        return new Flange(flange.point(), flange.axis().withDown(down), flange.toJoint());
    }

    private static Flange moved(Flange flange, double left, double up) {
        Position point = flange.point();
        Position moved = new Position(
                point.x(), point.y().plus(Length.ofMeters(left)), point.z().plus(Length.ofMeters(up)));
        return new Flange(moved, flange.axis(), flange.toJoint());
    }

    @Override
    public List<Assumption> assumptions() {
        boolean measured =
                output.axis().left().isPresent() && pinion.axis().left().isPresent();
        return measured ? List.of() : List.of(PARALLEL);
    }

    @Override
    public String text() {
        return LineSurveyText.write(this);
    }
}
