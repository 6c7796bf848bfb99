package drivetrain.table;

import drivetrain.finding.Source;
import drivetrain.finding.SourceClass;
import drivetrain.quantity.DecimalText;
import drivetrain.refusal.Place;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One row of a reference table.
 *
 * @param cells the cells by the names of their columns
 * @param source where the row's values come from
 * @param place where the row stands
 */
public record TableRow(Map<String, String> cells, Source source, Place place) {

    /** Copies the cells and keeps their order. */
    public TableRow {
        cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }

    static TableRow of(List<String> columns, List<String> cells, Source tableSource, Place place) {
        if (cells.size() != columns.size()) {
            throw ReferenceTable.malformed(
                    String.join(",", cells),
                    "has " + cells.size() + " cells where the columns are " + columns.size(),
                    place);
        }
        Map<String, String> byName = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            byName.put(columns.get(i), cells.get(i));
        }
        String ownClass = byName.getOrDefault("class", "");
        String ownSource = byName.getOrDefault("source", "");
        Source source = new Source(
                ownClass.isEmpty() ? tableSource.kind() : sourceClass(ownClass, place),
                ownSource.isEmpty() ? tableSource.citation() : ownSource);
        return new TableRow(byName, source, place);
    }

    /**
     * Returns a cell.
     *
     * @param column the name of the column
     * @return the cell's text, possibly empty
     * @throws drivetrain.refusal.RefusedException if the table has no such column
     */
    public String text(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw ReferenceTable.malformed(column, "is not a column of the table", place);
        }
        return cell;
    }

    /**
     * Returns a cell as a number.
     *
     * @param column the name of the column
     * @return a finite number; digits with a point for the decimals, or an exponent
     * @throws drivetrain.refusal.RefusedException if the cell is not a finite number, with its place
     */
    public double number(String column) {
        String cell = text(column);
        return DecimalText.parse(cell)
                .orElseThrow(() -> ReferenceTable.malformed(cell, "is not a number in column " + column, place));
    }

    /**
     * Returns a cell as a whole number.
     *
     * @param column the name of the column
     * @return the number
     * @throws drivetrain.refusal.RefusedException if the cell is not a whole number, with its place
     */
    public int integer(String column) {
        double value = number(column);
        if (value == Math.rint(value) && Math.abs(value) <= Integer.MAX_VALUE) {
            return (int) value;
        }
        throw ReferenceTable.malformed(text(column), "is not a whole number in column " + column, place);
    }

    static SourceClass sourceClass(String label, Place place) {
        return Arrays.stream(SourceClass.values())
                .filter(known -> known.label().equals(label))
                .findFirst()
                .orElseThrow(() -> ReferenceTable.malformed(label, "is not a source class", place));
    }
}
