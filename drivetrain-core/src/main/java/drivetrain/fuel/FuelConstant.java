package drivetrain.fuel;

import drivetrain.finding.Source;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A constant of {@code reference-tables/fuel/constants.csv} in the unit that the table names. */
record FuelConstant(double value, Source source) {

    private static final class Table {
        static final Map<String, FuelConstant> ROWS = ReferenceTable.load("fuel/constants.csv").rows().stream()
                .collect(Collectors.toUnmodifiableMap(row -> row.text("constant"), FuelConstant::of));
    }

    private static FuelConstant of(TableRow row) {
        return new FuelConstant(row.number("value"), row.source());
    }

    static FuelConstant of(String name) {
        return find(Table.ROWS::get, name, "fuel/constants.csv");
    }

    static <T> T find(Function<String, T> rows, String name, String table) {
        T row = rows.apply(name);
        if (row == null) {
            throw Refusal.of("fuel table", name, "is not in the table " + table).asException();
        }
        return row;
    }
}
