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
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads a torque curve as a test bench writes it: comma-separated, engine speed and torque, the units in the header.
 *
 * <pre>
 * # bench sheet of the rebuilt engine
 * speed rpm,torque lb-ft
 * 1000,310
 * 1500,340.5
 * </pre>
 *
 * The header may leave out the words {@code speed} and {@code torque} but never the units, and may put a unit in brackets. Cells are plain numbers
 * with a decimal point, without quotation marks. Lines that begin with {@code #} and blank lines are passed over.
 */
public final class TorqueCurveCsv {

    private static final String HEADER = "a header such as \"speed rpm,torque lb-ft\"";
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?[0-9]{1,20}(?:\\.[0-9]{0,20})?(?:[eE][+-]?[0-9]{1,3})?");

    private final SourceText source;
    private final List<OperatingPoint> points = new ArrayList<>();

    private TorqueCurveCsv(SourceText source) {
        this.source = source;
    }

    private record Header(String speedUnit, String torqueUnit) {}

    private record Cell(String text, Place place) {}

    /**
     * Reads a file.
     *
     * @param file a UTF-8 file
     * @return the curve
     * @throws IOException if the file cannot be read
     * @throws RefusedException if a line is not understood, with its place
     */
    public static TorqueCurve read(Path file) throws IOException {
        return read(SourceBytes.read(file));
    }

    /**
     * Reads a text.
     *
     * @param name the name by which refusals call it
     * @param text the whole text
     * @return the curve
     * @throws RefusedException if a line is not understood, with its place
     */
    public static TorqueCurve parse(String name, String text) {
        return read(SourceText.of(name, text));
    }

    static TorqueCurve read(SourceText source) {
        return new TorqueCurveCsv(source).curve();
    }

    private TorqueCurve curve() {
        String[] lines = source.text().split("\r\n|\n|\r", -1);
        Optional<Header> header = Optional.empty();
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i];
            if (!line.isBlank() && !line.startsWith("#")) {
                header = Optional.of(readLine(header, line, i + 1));
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

    /** Reads the header from the first line and a point from every other one. */
    private Header readLine(Optional<Header> header, String line, int number) {
        List<Cell> cells = cells(line, number);
        if (header.isEmpty()) {
            return new Header(
                    unit(cells.get(0), AngularSpeed.KIND, "speed"), unit(cells.get(1), Torque.KIND, "torque"));
        }
        if (points.size() == TorqueCurve.MOST_POINTS) {
            throw refusal(
                    "",
                    "has more than " + TorqueCurve.MOST_POINTS + " points",
                    "",
                    new Place(source.name(), number, 1));
        }
        points.add(point(cells, header.get()));
        return header.get();
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
