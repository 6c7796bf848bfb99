package drivetrain.document;

import drivetrain.fuel.PumpCurve;
import drivetrain.fuel.PumpPoint;
import drivetrain.quantity.Current;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Quantity;
import drivetrain.quantity.VolumeFlow;
import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** The lines of a pump curve: pressure, flow and, where it was measured, current, with the units in the header. */
final class PumpSheet {

    private static final String HEADER = "a header such as \"pressure psi,flow L/h,current A\"";
    private static final List<String> NAMES = List.of("pressure", "flow", "current");

    private final SourceText source;
    private final List<PumpPoint> points = new ArrayList<>();
    private List<String> units = List.of();

    PumpSheet(SourceText source) {
        this.source = source;
    }

    List<PumpPoint> points() {
        int number = 0;
        for (Iterator<String> lines = source.text().lines().iterator(); lines.hasNext(); ) {
            String line = lines.next();
            number++;
            if (!line.isBlank() && !line.startsWith("#")) {
                readLine(line, number);
            }
        }
        if (units.isEmpty()) {
            throw refusal("", "is empty", 1, 1);
        }
        return List.copyOf(points);
    }

    private void readLine(String line, int number) {
        String[] cells = line.split(",", -1);
        boolean fits = units.isEmpty() ? cells.length == 2 || cells.length == 3 : cells.length == units.size();
        if (line.indexOf('"') >= 0 || !fits) {
            throw refusal(
                    line,
                    line.indexOf('"') >= 0 ? "has a quotation mark" : "has " + cells.length + " cells",
                    number,
                    1);
        }
        if (points.size() == PumpCurve.MOST_POINTS) {
            throw refusal("", "has more than " + PumpCurve.MOST_POINTS + " points", number, 1);
        }
        if (units.isEmpty()) {
            units = header(cells, number);
            return;
        }
        Pressure pressure = cell(cells, 0, Pressure.KIND, number);
        VolumeFlow flow = cell(cells, 1, VolumeFlow.KIND, number);
        Optional<Current> current =
                units.size() == 3 ? Optional.of(cell(cells, 2, Current.KIND, number)) : Optional.empty();
        points.add(placed(number, 1, () -> new PumpPoint(pressure, flow, current)));
    }

    private List<String> header(String[] cells, int number) {
        List<Kind<?>> kinds = List.of(Pressure.KIND, VolumeFlow.KIND, Current.KIND);
        List<String> read = new ArrayList<>();
        for (int i = 0; i < cells.length; i++) {
            String text = cells[i].strip();
            String unit = text.startsWith(NAMES.get(i))
                    ? text.substring(NAMES.get(i).length()).strip()
                    : text;
            if (kinds.get(i).unit(unit).isEmpty()) {
                throw refusal(text, "does not name a unit of " + kinds.get(i).name(), number, column(cells, i));
            }
            read.add(unit);
        }
        return read;
    }

    private <Q extends Quantity<Q>> Q cell(String[] cells, int index, Kind<Q> kind, int number) {
        String text = cells[index].strip();
        if (!text.matches("[+-]?[0-9]{1,20}(?:\\.[0-9]{0,20})?")) {
            throw refusal(text, "is not a number", number, column(cells, index));
        }
        return placed(number, column(cells, index), () -> kind.parse(text + " " + units.get(index)));
    }

    private interface Reading<T> {
        T get();
    }

    private <T> T placed(int line, int column, Reading<T> reading) {
        try {
            return reading.get();
        } catch (RefusedException e) {
            throw e.in(new Place(source.name(), line, column));
        }
    }

    private static int column(String[] cells, int index) {
        int column = 1;
        for (int i = 0; i < index; i++) {
            column += cells[i].length() + 1;
        }
        return column + cells[index].length() - cells[index].stripLeading().length();
    }

    private RefusedException refusal(String given, String problem, int line, int column) {
        return Refusal.of("pump curve", Characters.excerpt(given), problem)
                .allowing(HEADER + ", then one point a line")
                .in(new Place(source.name(), line, column))
                .asException();
    }
}
