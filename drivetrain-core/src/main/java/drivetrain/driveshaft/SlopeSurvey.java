package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A line measured with inclinometer, tape and plumb line.
 *
 * @param output the direction of the transfer case's output
 * @param runs the pieces, the one at the transfer case first
 * @param pinion the direction of the pinion
 */
public record SlopeSurvey(AxisDirection output, List<SurveyRun> runs, AxisDirection pinion) implements LineSurvey {

    private static final Source STRAIGHT = Source.commonPractice("driveline built along the vehicle");
    private static final Assumption PARALLEL = Assumption.flagged(
            "plan view of output and pinion",
            "output and pinion are taken as parallel to the centerline in plan view; measure their turn where an engine or axle stands askew",
            STRAIGHT);
    private static final Assumption NO_OFFSET = Assumption.flagged(
            "sideward offset",
            "a shaft whose sideward offset is not given is taken as running straight along the vehicle; measure it with plumb lines",
            STRAIGHT);

    /**
     * Copies the runs and checks their count.
     *
     * @throws drivetrain.refusal.RefusedException if there is none or there are more than two
     */
    public SlopeSurvey {
        runs = List.copyOf(runs);
        if (runs.isEmpty() || runs.size() > 2) {
            throw Refusal.of("shaft line", runs.size() + " shafts", "is not a count of shafts that is known here")
                    .allowing("1, or 2 with a center bearing")
                    .asException();
        }
    }

    @Override
    public ShaftLine line(ShaftPlace place) {
        List<Vector3D> centers = new ArrayList<>();
        Vector3D at = Vector3D.ZERO;
        centers.add(at);
        for (SurveyRun run : runs) {
            at = at.add(run.vector(place));
            centers.add(at);
        }
        return ShaftLine.of(centers, output.vector(place), pinion.vector(place));
    }

    @Override
    public int jointCount() {
        return runs.size() + 1;
    }

    @Override
    public List<SurveyReading> readings() {
        List<SurveyReading> readings = new ArrayList<>();
        readings.add(angle("slope of the output", error -> new SlopeSurvey(turned(output, error), runs, pinion)));
        for (int i = 0; i < runs.size(); i++) {
            addRun(readings, i);
        }
        readings.add(angle("slope of the pinion", error -> new SlopeSurvey(output, runs, turned(pinion, error))));
        return readings;
    }

    private void addRun(List<SurveyReading> readings, int index) {
        SurveyRun run = runs.get(index);
        String of = runs.size() == 1 ? " of the shaft" : " of shaft " + (index + 1);
        run.slope()
                .ifPresent(slope -> readings.add(angle(
                        "slope" + of,
                        error -> with(
                                index,
                                new SurveyRun(
                                        run.length(),
                                        Optional.of(plus(slope, error)),
                                        Optional.empty(),
                                        run.left())))));
        run.fall()
                .ifPresent(fall -> readings.add(length(
                        "fall" + of,
                        error -> with(
                                index,
                                new SurveyRun(
                                        run.length(),
                                        Optional.empty(),
                                        Optional.of(fall.plus(Length.ofMeters(error))),
                                        run.left())))));
        Length aside = run.left().orElse(Length.ofMeters(0.0));
        readings.add(length(
                "sideward offset" + of, error -> with(index, run.withLeft(aside.plus(Length.ofMeters(error))))));
    }

    private static SurveyReading angle(String name, DoubleFunction<LineSurvey> misread) {
        return new SurveyReading(name, true, misread);
    }

    private static SurveyReading length(String name, DoubleFunction<LineSurvey> misread) {
        return new SurveyReading(name, false, misread);
    }

    private SlopeSurvey with(int index, SurveyRun run) {
        List<SurveyRun> changed = new ArrayList<>(runs);
        changed.set(index, run);
        return new SlopeSurvey(output, changed, pinion);
    }

    private static AxisDirection turned(AxisDirection axis, double error) {
        return axis.withDown(plus(axis.down(), error));
    }

    private static Angle plus(Angle angle, double error) {
        return Angle.ofRadians(angle.toRadians() + error);
    }

    @Override
    public List<Assumption> assumptions() {
        List<Assumption> all = new ArrayList<>();
        if (output.left().isEmpty() || pinion.left().isEmpty()) {
            all.add(PARALLEL);
        }
        if (runs.stream().anyMatch(run -> run.left().isEmpty())) {
            all.add(NO_OFFSET);
        }
        return all;
    }

    @Override
    public String text() {
        return LineSurveyText.write(this);
    }
}
