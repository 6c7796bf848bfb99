package drivetrain.road;

import drivetrain.finding.Source;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One row of the table of limits.
 *
 * @param most the greatest value that the limit names
 * @param source where the limit comes from
 */
record RoadLimit(double most, Source source) {

    private static final class Table {
        private static final Map<String, RoadLimit> ROWS = ReferenceTable.load("road/limits.csv").rows().stream()
                .collect(Collectors.toUnmodifiableMap(row -> row.text("limit"), RoadLimit::of));
    }

    private static RoadLimit of(TableRow row) {
        return new RoadLimit(row.number("most"), row.source());
    }

    static RoadLimit of(String name) {
        RoadLimit limit = Table.ROWS.get(name);
        if (limit == null) {
            throw Refusal.of("road limit", name, "is not in the table road/limits.csv")
                    .asException();
        }
        return limit;
    }
}
