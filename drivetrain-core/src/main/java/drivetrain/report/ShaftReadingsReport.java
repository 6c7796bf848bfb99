package drivetrain.report;

import drivetrain.assessment.ShaftAnswer;
import drivetrain.assessment.ShaftsAnswer;
import drivetrain.driveshaft.ReadingTolerance;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How wrong each reading on the vehicle may be before an answer about the shafts changes. */
public final class ShaftReadingsReport {

    private ShaftReadingsReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(ShaftsAnswer answer, UnitSystem units) {
        List<List<Cell>> rows = new ArrayList<>();
        for (ShaftAnswer shaft : answer.shafts()) {
            String place = shaft.installed().place().label();
            shaft.tolerances().value().ifPresent(all -> all.forEach(tolerance -> rows.add(row(place, tolerance))));
            shaft.tolerances()
                    .reason()
                    .ifPresent(why ->
                            rows.add(List.of(Cell.of(place), Cell.notEvaluated(why), Cell.empty(), Cell.empty())));
        }
        String angle = Figure.of(Angle.ofRadians(ReadingTolerance.ANGLE_ERROR), Display.JOINT_ANGLE)
                .text(units);
        String length = Figure.of(Length.ofMeters(ReadingTolerance.LENGTH_ERROR), Display.DIMENSION)
                .text(units);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(
                "A reading may be wrong by so much, the others being right, before a verdict at the first"
                        + " speed of \"shafts\" changes; the first figure is what an error of " + angle + " or "
                        + length
                        + " does to the equivalent residual angle."));
        blocks.add(new Grid(
                "readings",
                "",
                List.of(
                        Column.ofText("reading", "reading"),
                        Column.ofFigures("residual", "changes residual by"),
                        Column.ofFigures("torsional", "torsional verdict holds"),
                        Column.ofFigures("inertial", "inertial verdict holds")),
                rows));
        return new Report("shaftReadings", blocks);
    }

    private static List<Cell> row(String place, ReadingTolerance tolerance) {
        return List.of(
                Cell.of(place + ", " + tolerance.reading()),
                Cell.of(Figure.of(Angle.ofRadians(tolerance.residual()), Display.JOINT_ANGLE)),
                error(tolerance.torsional(), tolerance.isAngle()),
                error(tolerance.inertial(), tolerance.isAngle()));
    }

    private static Cell error(OptionalDouble error, boolean angle) {
        if (error.isEmpty()) {
            return Cell.of(angle ? "beyond 5 deg" : "beyond 100 mm");
        }
        double size = error.getAsDouble();
        return Cell.of(
                angle
                        ? Figure.of(Angle.ofRadians(size), Display.JOINT_ANGLE)
                        : Figure.of(Length.ofMeters(size), Display.DIMENSION));
    }
}
