package drivetrain.report;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A table. The first column names the row: where a screen is too narrow for the table, each row becomes a record under that name.
 *
 * @param key the machine name
 * @param title the words above the table; empty for none
 * @param columns the columns, at least one, each with a key of its own
 * @param rows the rows, each with one cell per column
 */
public record Grid(String key, String title, List<Column> columns, List<List<Cell>> rows) implements Block {

    /**
     * Copies and checks.
     *
     * @throws IllegalArgumentException if there is no column, if two columns have one key, if a row has more or fewer cells than there are
     *     columns, or if the key is no machine name
     */
    public Grid {
        MachineName.require(key);
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        Set<String> keys = new HashSet<>();
        for (Column column : columns) {
            if (!keys.add(column.key())) {
                throw new IllegalArgumentException("two columns of " + key + " have the key " + column.key());
            }
        }
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("table " + key + " needs a column");
        }
        for (List<Cell> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "a row of " + key + " has " + row.size() + " cells; allowed: " + columns.size());
            }
        }
    }

    /**
     * Returns the cells of one column.
     *
     * @param index the index of the column, counted from 0
     * @return its cells from top to bottom
     */
    public List<Cell> cells(int index) {
        return rows.stream().map(row -> row.get(index)).toList();
    }

    @Override
    public <R> R layOut(Layout<R> layout) {
        return layout.grid(this);
    }
}
