package drivetrain.tire;

import drivetrain.finding.Source;
import drivetrain.quantity.Mass;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.List;

/**
 * A load capacity index: the greatest load that one tire carries at the speed of its speed symbol, when inflated as its maker says.
 *
 * <p>A table, not a formula: 10<sup>(LI + 132)/80</sup> kg departs from the table by up to 1.3 %.
 *
 * @param value the index, 0 to 170
 */
public record LoadIndex(int value) {

    /** The least index in the table. */
    public static final int LEAST = 0;

    /** The greatest index in the table. */
    public static final int MOST = 170;

    /**
     * Checks the range.
     *
     * @throws drivetrain.refusal.RefusedException if the index is not in the table
     */
    public LoadIndex {
        if (value < LEAST || value > MOST) {
            throw Refusal.of("load index", Integer.toString(value), "is out of range")
                    .allowing(LEAST + " to " + MOST)
                    .asException();
        }
    }

    static String allowed() {
        return "load index " + LEAST + " to " + MOST;
    }

    /**
     * Returns the load.
     *
     * @return the load capacity of one tire
     */
    public Mass capacity() {
        return Table.ROWS.get(value).capacity();
    }

    /**
     * Returns where the load comes from.
     *
     * @return the source of the table row
     */
    public Source source() {
        return Table.ROWS.get(value).source();
    }

    /**
     * Returns the index as a tire is marked.
     *
     * @return the number
     */
    @Override
    public String toString() {
        return Integer.toString(value);
    }

    private record Row(Mass capacity, Source source) {}

    /** Read once, when the first load is asked for. */
    private static final class Table {
        static final List<Row> ROWS = read(ReferenceTable.load("tire/load-index.csv"));

        private Table() {}

        private static List<Row> read(ReferenceTable table) {
            List<TableRow> rows = table.rows();
            for (int i = 0; i <= MOST; i++) {
                if (rows.size() != MOST + 1 || rows.get(i).integer("index") != i) {
                    throw Refusal.of("load index table", table.name(), "must count from 0 to 170 without a gap")
                            .asException();
                }
            }
            return rows.stream()
                    .map(row -> new Row(Mass.ofKilograms(row.number("capacity")), row.source()))
                    .toList();
        }
    }
}
