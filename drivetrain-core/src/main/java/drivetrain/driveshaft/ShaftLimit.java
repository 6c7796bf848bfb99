package drivetrain.driveshaft;

import drivetrain.finding.HouseLimit;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The packed limits of driveshafts, read from {@code driveshaft/line-limits.csv} and {@code driveshaft/speed-limits.csv}, in the units of their rows. */
final class ShaftLimit {

    private ShaftLimit() {}

    private static final class Tables {
        static final Map<String, HouseLimit> ROWS = Stream.of(
                        "driveshaft/line-limits.csv", "driveshaft/speed-limits.csv")
                .flatMap(table -> ReferenceTable.load(table).rows().stream())
                .collect(Collectors.toUnmodifiableMap(row -> row.text("limit"), Tables::limit));

        private Tables() {}

        private static HouseLimit limit(TableRow row) {
            return new HouseLimit(row.number("value"), row.source());
        }
    }

    /** The limit of a row. */
    static HouseLimit of(String name) {
        HouseLimit limit = Tables.ROWS.get(name);
        if (limit == null) {
            throw Refusal.of("driveshaft limit", name, "is not in the tables of driveshaft limits")
                    .asException();
        }
        return limit;
    }

    /** How far axes may leave a common plane and still count as lying in it, in radians: what an inclinometer can tell, and no shop's rule. */
    static double onePlane() {
        return Math.toRadians(of("one-plane").value());
    }
}
