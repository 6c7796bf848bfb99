package drivetrain.engine;

import drivetrain.finding.Source;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One row of the table of limits.
 *
 * @param least the least value that is kept
 * @param most the greatest value that is kept
 * @param source where the limit comes from
 */
record EngineLimit(double least, double most, Source source) {

    private static final class Table {
        private static final Map<String, EngineLimit> ROWS = ReferenceTable.load("engine/limits.csv").rows().stream()
                .collect(Collectors.toUnmodifiableMap(row -> row.text("limit"), EngineLimit::of));
    }

    private static EngineLimit of(TableRow row) {
        return new EngineLimit(row.number("least"), row.number("most"), row.source());
    }

    static EngineLimit of(String name) {
        EngineLimit limit = Table.ROWS.get(name);
        if (limit == null) {
            throw Refusal.of("engine limit", name, "is not in the table engine/limits.csv")
                    .asException();
        }
        return limit;
    }

    boolean contains(double value) {
        return value >= least && value <= most;
    }
}
