package drivetrain.fuel;

import drivetrain.finding.Source;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.Map;
import java.util.stream.Collectors;

/** A limit of {@code reference-tables/fuel/limits.csv}. */
record FuelLimit(double least, double most, Source source) {

    private static final class Table {
        static final Map<String, FuelLimit> ROWS = ReferenceTable.load("fuel/limits.csv").rows().stream()
                .collect(Collectors.toUnmodifiableMap(row -> row.text("limit"), FuelLimit::of));
    }

    private static FuelLimit of(TableRow row) {
        return new FuelLimit(row.number("least"), row.number("most"), row.source());
    }

    static FuelLimit of(String name) {
        return FuelConstant.find(Table.ROWS::get, name, "fuel/limits.csv");
    }

    boolean contains(double value) {
        return value >= least && value <= most;
    }
}
