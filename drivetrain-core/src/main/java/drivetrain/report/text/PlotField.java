package drivetrain.report.text;

import drivetrain.quantity.UnitSystem;
import drivetrain.report.LinePlot.Curve;
import drivetrain.report.LinePlot.Point;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The field between the axes: curves made of dots, each with its mark where it runs alone. */
final class PlotField {

    private static final int MARK_DISTANCE = 18;

    private final Dots dots;
    private final int rows;
    private final int columns;
    private final PlotAxis x;
    private final PlotAxis y;
    private final boolean[][] field;
    private final int[][] curvesThrough;
    private final char[][] marks;

    PlotField(Dots dots, int rows, int columns, PlotAxis x, PlotAxis y) {
        this.dots = dots;
        this.rows = rows;
        this.columns = columns;
        this.x = x;
        this.y = y;
        this.field = new boolean[rows * dots.down()][columns * dots.across()];
        this.curvesThrough = new int[rows][columns];
        this.marks = new char[rows][columns];
    }

    /** One place of the screen in the field. */
    private record Spot(int row, int column) {}

    /** Draws the curves. */
    void draw(List<Curve> curves, UnitSystem system) {
        List<List<Spot>> spots =
                curves.stream().map(curve -> List.copyOf(trace(curve, system))).toList();
        for (List<Spot> curve : spots) {
            curve.forEach(spot -> curvesThrough[spot.row()][spot.column()]++);
        }
        for (int index = 0; index < spots.size(); index++) {
            mark(curves.get(index).mark(), spots.get(index), index);
        }
    }

    /** Returns the row, counted from 0 at the top, on which a number of the vertical axis stands. */
    int row(double number) {
        return dotRow(number) / dots.down();
    }

    /** Returns the column, counted from 0 on the left, in which a number of the horizontal axis stands. */
    int column(double number) {
        return dotColumn(number) / dots.across();
    }

    int rows() {
        return rows;
    }

    int columns() {
        return columns;
    }

    /** Writes one row. */
    String text(int row) {
        StringBuilder text = new StringBuilder(columns);
        boolean[] cell = new boolean[dots.across() * dots.down()];
        for (int column = 0; column < columns; column++) {
            if (marks[row][column] != 0) {
                text.append(marks[row][column]);
            } else if (curvesThrough[row][column] == 0) {
                text.append(' ');
            } else {
                for (int dot = 0; dot < cell.length; dot++) {
                    cell[dot] = field[row * dots.down() + dot / dots.across()][
                            column * dots.across() + dot % dots.across()];
                }
                text.append(dots.sign(cell));
            }
        }
        return text.toString();
    }

    private int dotRow(double number) {
        return field.length - 1 - y.place(number, field.length);
    }

    private int dotColumn(double number) {
        return x.place(number, field[0].length);
    }

    private Set<Spot> trace(Curve curve, UnitSystem system) {
        Set<Spot> spots = new LinkedHashSet<>();
        Point from = curve.points().get(0);
        for (Point to : curve.points()) {
            int startColumn = dotColumn(from.x().number(system));
            int startRow = dotRow(from.y().number(system));
            int across = dotColumn(to.x().number(system)) - startColumn;
            int down = dotRow(to.y().number(system)) - startRow;
            int longest = Math.max(1, Math.max(Math.abs(across), Math.abs(down)));
            for (int step = 0; step <= longest; step++) {
                int column = startColumn + Math.round((float) across * step / longest);
                int row = startRow + Math.round((float) down * step / longest);
                field[row][column] = true;
                spots.add(new Spot(row / dots.down(), column / dots.across()));
            }
            from = to;
        }
        return spots;
    }

    /** Puts marks along a curve, the first one as near to its end as can be; those of neighboring curves are staggered. */
    private void mark(char mark, List<Spot> spots, int index) {
        int last = spots.size() - 1;
        place(mark, clearest(spots));
        int stagger = index % 3 * MARK_DISTANCE / 6;
        for (int wanted = last - MARK_DISTANCE - stagger; wanted > MARK_DISTANCE / 2; wanted -= MARK_DISTANCE) {
            nearest(spots, wanted).ifPresent(spot -> place(mark, spot));
        }
    }

    private void place(char mark, Spot spot) {
        marks[spot.row()][spot.column()] = mark;
    }

    /** Finds the last spot where the curve runs alone; where it never does, the one that it shares with the fewest. */
    private Spot clearest(List<Spot> spots) {
        Spot best = spots.get(spots.size() - 1);
        int least = Integer.MAX_VALUE;
        for (int place = spots.size() - 1; place >= 0 && least > 1; place--) {
            Spot spot = spots.get(place);
            if (isUnmarked(spot) && curvesThrough[spot.row()][spot.column()] < least) {
                least = curvesThrough[spot.row()][spot.column()];
                best = spot;
            }
        }
        return best;
    }

    private Optional<Spot> nearest(List<Spot> spots, int wanted) {
        for (int distance = 0; distance < MARK_DISTANCE / 3; distance++) {
            for (int place : new int[] {wanted - distance, wanted + distance}) {
                Spot spot = spots.get(place);
                if (isUnmarked(spot) && curvesThrough[spot.row()][spot.column()] == 1) {
                    return Optional.of(spot);
                }
            }
        }
        return Optional.empty();
    }

    /** Tells whether there is no mark here, to the left and to the right. */
    private boolean isUnmarked(Spot spot) {
        char[] row = marks[spot.row()];
        int column = spot.column();
        return row[column] == 0
                && (column == 0 || row[column - 1] == 0)
                && (column == columns - 1 || row[column + 1] == 0);
    }
}
