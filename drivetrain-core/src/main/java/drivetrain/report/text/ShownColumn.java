package drivetrain.report.text;

import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Cell;
import drivetrain.report.Column;
import drivetrain.report.Grid;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A column as it is shown: with both unit systems, a column of figures of one kind with two units is shown twice.
 *
 * @param index the index of the column in its table
 * @param column the column
 * @param system the unit system of its figures, {@link UnitSystem#BOTH} only where the two are alike or each cell names its own unit
 * @param unit the unit that all its figures share, for its head; empty where there is none or where each cell names its own
 * @param unitInCells true if each cell names its own unit
 */
record ShownColumn(int index, Column column, UnitSystem system, String unit, boolean unitInCells) {

    static List<ShownColumn> of(Grid grid, Page page) {
        List<ShownColumn> shown = new ArrayList<>();
        for (int index = 0; index < grid.columns().size(); index++) {
            List<Figure> figures = figures(grid.cells(index));
            boolean twice = page.units() == UnitSystem.BOTH
                    && figures.stream().anyMatch(Signs::hasTwoUnits)
                    && units(figures, UnitSystem.US, page.signs()).size() == 1;
            if (twice) {
                shown.add(of(grid, index, figures, UnitSystem.US, page.signs()));
                shown.add(of(grid, index, figures, UnitSystem.METRIC, page.signs()));
            } else {
                shown.add(of(grid, index, figures, page.units(), page.signs()));
            }
        }
        return shown;
    }

    private static ShownColumn of(Grid grid, int index, List<Figure> figures, UnitSystem system, Signs signs) {
        Set<String> units = units(figures, system, signs);
        String unit = units.size() == 1 ? units.iterator().next() : "";
        return new ShownColumn(index, grid.columns().get(index), system, unit, units.size() > 1);
    }

    private static Set<String> units(List<Figure> figures, UnitSystem system, Signs signs) {
        Set<String> units = new LinkedHashSet<>();
        figures.forEach(figure -> units.add(signs.unit(figure, system)));
        return units;
    }

    private static List<Figure> figures(List<Cell> cells) {
        return cells.stream().flatMap(cell -> figure(cell).stream()).toList();
    }

    static Optional<Figure> figure(Cell cell) {
        return cell.<Optional<Figure>>fold(
                Optional::of, text -> Optional.empty(), reason -> Optional.empty(), Optional::empty);
    }

    /** Writes a figure as it stands in this column. */
    String text(Figure figure, Signs signs) {
        return unitInCells ? signs.text(figure, system) : figure.digits(system);
    }
}
