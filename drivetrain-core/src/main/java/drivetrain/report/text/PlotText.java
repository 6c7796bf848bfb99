package drivetrain.report.text;

import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.LinePlot;
import drivetrain.report.LinePlot.Curve;
import drivetrain.report.LinePlot.Point;
import drivetrain.report.text.Line.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * A drawing on a page: the name of the vertical axis, the field between its axes, the name of the horizontal axis. Each curve carries its
 * mark, and its name stands at its end; where there is no room for that, the names stand below the drawing.
 *
 * <p>With both unit systems the axes are drawn in the US units.
 */
final class PlotText {

    private static final int USUAL_WIDTH = 80;
    private static final int WIDEST = 120;
    private static final int LEAST_ROWS = 5;
    private static final int LEAST_COLUMNS = 8;

    private final LinePlot plot;
    private final Signs signs;
    private final UnitSystem system;
    private final int width;
    private final PlotAxis x;
    private final PlotAxis y;

    private PlotText(LinePlot plot, Page page) {
        this.plot = plot;
        this.signs = page.signs();
        this.system = page.units() == UnitSystem.METRIC ? UnitSystem.METRIC : UnitSystem.US;
        this.width = Math.min(WIDEST, page.width().orElse(USUAL_WIDTH));
        this.x = axis(Point::x);
        this.y = axis(Point::y);
    }

    /** Draws into the lines that the page has for a drawing, less those of its title. */
    static List<Line> of(LinePlot plot, Page page, int titleLines) {
        return new PlotText(plot, page).draw(page.height() - titleLines);
    }

    private PlotAxis axis(Function<Point, Figure> coordinate) {
        return PlotAxis.spanning(plot.curves().stream()
                .flatMap(curve -> curve.points().stream())
                .mapToDouble(point -> coordinate.apply(point).number(system))
                .summaryStatistics());
    }

    private List<Line> draw(int height) {
        Point sample = plot.curves().get(0).points().get(0);
        List<Line> yName = name(plot.yName(), sample.y(), 0);
        int labels = labelWidth(height - yName.size() - 3);
        List<Line> legend = labels == 0 ? legend() : List.of();
        int rows = Math.max(LEAST_ROWS, height - yName.size() - 3 - legend.size());
        List<PlotAxis.Tick> yTicks = y.ticks(Math.max(2, rows / 3));
        int left = 1
                + yTicks.stream().mapToInt(tick -> tick.label().length()).max().orElse(0);
        int columns = Math.max(LEAST_COLUMNS, width - left - 1 - labels);
        PlotField field = new PlotField(signs.dots(), rows, columns, x, y);
        field.draw(plot.curves(), system);

        List<Line> lines = new ArrayList<>(yName);
        lines.addAll(fieldLines(field, yTicks, left, labels > 0));
        lines.addAll(xAxis(field, left));
        lines.addAll(name(plot.xName(), sample.x(), left + 1 + columns));
        lines.addAll(legend);
        return lines;
    }

    /** Returns the columns that the names at the ends of the curves take; 0 if they do not fit there. */
    private int labelWidth(int rows) {
        double edge = x.low() + 0.9 * (x.high() - x.low());
        boolean atEdge = plot.curves().stream().allMatch(curve -> end(curve).x().number(system) >= edge);
        int widest = plot.curves().stream()
                .mapToInt(curve -> DisplayWidth.of(label(curve)))
                .max()
                .orElse(0);
        return atEdge && plot.curves().size() <= rows && 4 * (widest + 1) <= width ? widest + 1 : 0;
    }

    private static Point end(Curve curve) {
        return curve.points().get(curve.points().size() - 1);
    }

    private String label(Curve curve) {
        String name = signs.text(curve.name());
        String mark = String.valueOf(curve.mark());
        return name.isBlank() || name.equals(mark) ? mark : mark + " " + name;
    }

    private List<Line> fieldLines(PlotField field, List<PlotAxis.Tick> ticks, int left, boolean labeled) {
        Map<Integer, String> numbers = new HashMap<>();
        ticks.forEach(tick -> numbers.put(field.row(tick.value()), tick.label()));
        Map<Integer, String> names = new HashMap<>();
        if (labeled) {
            List<Integer> wanted = plot.curves().stream()
                    .map(curve -> field.row(end(curve).y().number(system)))
                    .toList();
            List<Integer> placed = EndLabels.place(wanted, field.rows());
            for (int index = 0; index < placed.size(); index++) {
                names.put(placed.get(index), " " + label(plot.curves().get(index)));
            }
        }
        List<Line> lines = new ArrayList<>();
        for (int row = 0; row < field.rows(); row++) {
            String number = DisplayWidth.padStart(numbers.getOrDefault(row, ""), left - 1);
            String axis = numbers.containsKey(row) ? signs.tickLeft() : signs.vertical();
            String name = names.getOrDefault(row, "");
            lines.add(new Line(List.of(
                    Span.of(number + " "), new Span(Style.FAINT, axis), Span.of(field.text(row)), Span.of(name))));
        }
        return lines;
    }

    private List<Line> xAxis(PlotField field, int left) {
        int origin = left + 1;
        StringBuilder axis = new StringBuilder(signs.corner());
        axis.append(signs.horizontal().repeat(field.columns()));
        StringBuilder numbers = new StringBuilder();
        for (PlotAxis.Tick tick : x.ticks(Math.max(2, field.columns() / 8))) {
            int column = field.column(tick.value());
            int length = tick.label().length();
            int start = Math.min(origin + column - (length - 1) / 2, origin + field.columns() - length);
            if (start >= numbers.length() + (numbers.length() == 0 ? 0 : 2)) {
                numbers.append(" ".repeat(start - numbers.length())).append(tick.label());
                axis.replace(1 + column, 2 + column, signs.tickBelow());
            }
        }
        return List.of(
                new Line(List.of(Span.of(" ".repeat(left)), new Span(Style.FAINT, axis.toString()))),
                Line.of(Style.PLAIN, numbers.toString()));
    }

    private List<Line> name(String name, Figure sample, int end) {
        String unit = signs.unit(sample, system);
        String text = signs.text(name) + (unit.isEmpty() ? "" : ", " + unit);
        if (DisplayWidth.of(text) <= end) {
            return List.of(Line.of(Style.PLAIN, DisplayWidth.padStart(text, end)));
        }
        return Flow.of(OptionalInt.of(width), List.of(), 0, List.of(Span.of(text)));
    }

    private List<Line> legend() {
        List<Line> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (Curve curve : plot.curves()) {
            String entry = label(curve);
            if (line.length() > 0 && DisplayWidth.of(line.toString()) + 3 + DisplayWidth.of(entry) > width) {
                lines.addAll(wrapped(line));
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : "   ").append(entry);
        }
        lines.addAll(wrapped(line));
        return lines;
    }

    private List<Line> wrapped(StringBuilder line) {
        String text = line.toString();
        return DisplayWidth.of(text) <= width
                ? List.of(Line.of(Style.PLAIN, text))
                : Flow.of(OptionalInt.of(width), List.of(), 2, List.of(Span.of(text)));
    }
}
