package drivetrain.document;

import drivetrain.engine.OperatingPoint;
import drivetrain.engine.TorqueCurve;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Quantity;
import drivetrain.quantity.Torque;
import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The lines of a torque curve, read one after the other. */
final class CurveSheet {

    private static final String HEADER = "a header such as \"speed rpm,torque lb-ft\"";
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?[0-9]{1,20}(?:\\.[0-9]{0,20})?(?:[eE][+-]?[0-9]{1,3})?");

    private final SourceText source;
    private final List<OperatingPoint> points = new ArrayList<>();
    private Optional<Header> header = Optional.empty();

    CurveSheet(SourceText source) {
        this.source = source;
    }

    private record Header(String speedUnit, String torqueUnit) {}

    private record Cell(String text, Place place) {}

    /** Reads the lines and lays the curve through the points. */
    TorqueCurve curve() {
        int number = 0;
        for (Iterator<String> lines = source.text().lines().iterator(); lines.hasNext(); ) {
            String line = lines.next();
            number++;
            if (!line.isBlank() && !line.startsWith("#")) {
                readLine(line, number);
            }
        }
        if (header.isEmpty()) {
            throw refusal("", "is empty", HEADER, new Place(source.name(), 1, 1));
        }
        try {
            return TorqueCurve.of(points);
        } catch (RefusedException e) {
            throw e.in(new Place(source.name(), 0, 0));
        }
    }

    private void readLine(String line, int number) {
        List<Cell> cells = cells(line, number);
        if (header.isEmpty()) {
            header = Optional.of(new Header(
                    unit(cells.get(0), AngularSpeed.KIND, "speed"), unit(cells.get(1), Torque.KIND, "torque")));
        } else if (points.size() == TorqueCurve.MOST_POINTS) {
            throw refusal(
                    "",
                    "has more than " + TorqueCurve.MOST_POINTS + " points",
                    "",
                    new Place(source.name(), number, 1));
        } else {
            points.add(point(cells, header.get()));
        }
    }

    private List<Cell> cells(String line, int number) {
        String[] texts = line.split(",", -1);
        if (line.indexOf('"') >= 0 || texts.length != 2) {
            String problem = line.indexOf('"') >= 0
                    ? "has a quotation mark"
                    : "has " + texts.length + (texts.length == 1 ? " cell" : " cells");
            throw refusal(line, problem, "two cells with a comma between them", new Place(source.name(), number, 1));
        }
        return List.of(cell(texts[0], number, 1), cell(texts[1], number, texts[0].length() + 2));
    }

    private Cell cell(String text, int number, int column) {
        int spaces = text.length() - text.stripLeading().length();
        return new Cell(text.strip(), new Place(source.name(), number, column + spaces));
    }

    private static <Q extends Quantity<Q>> String unit(Cell cell, Kind<Q> kind, String word) {
        String unit = cell.text().startsWith(word)
                ? cell.text().substring(word.length()).strip()
                : cell.text();
        boolean bracketed =
                (unit.startsWith("(") && unit.endsWith(")")) || (unit.startsWith("[") && unit.endsWith("]"));
        String bare = bracketed ? unit.substring(1, unit.length() - 1).strip() : unit;
        if (kind.unit(bare).isEmpty()) {
            throw refusal(cell.text(), "does not name a unit of " + kind.name(), HEADER, cell.place());
        }
        return bare;
    }

    private static OperatingPoint point(List<Cell> cells, Header header) {
        AngularSpeed speed = quantity(cells.get(0), AngularSpeed.KIND, header.speedUnit());
        Torque torque = quantity(cells.get(1), Torque.KIND, header.torqueUnit());
        try {
            return OperatingPoint.of(speed, torque);
        } catch (RefusedException e) {
            throw e.in(cells.get(0).place());
        }
    }

    private static <Q extends Quantity<Q>> Q quantity(Cell cell, Kind<Q> kind, String unit) {
        if (!NUMBER.matcher(cell.text()).matches()) {
            throw refusal(
                    cell.text(), "is not a number", "a plain number; its unit stands in the header", cell.place());
        }
        try {
            return kind.parse(cell.text() + " " + unit);
        } catch (RefusedException e) {
            throw e.in(cell.place());
        }
    }

    private static RefusedException refusal(String given, String problem, String allowed, Place place) {
        return Refusal.of("torque curve", Characters.excerpt(given), problem)
                .allowing(allowed)
                .in(place)
                .asException();
    }
}
