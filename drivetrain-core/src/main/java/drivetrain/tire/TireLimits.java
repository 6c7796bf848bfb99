package drivetrain.tire;

import drivetrain.finding.Source;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.Map;
import java.util.stream.Collectors;

/** The limits of the tire checks, read from {@code tire/limits.csv}, which a shop can replace. */
final class TireLimits {

    private TireLimits() {}

    /** A limit with its source. */
    record Limit(double value, Source source) {}

    private static final class Table {
        static final Map<String, Limit> LIMITS = ReferenceTable.load("tire/limits.csv").rows().stream()
                .collect(Collectors.toUnmodifiableMap(row -> row.text("limit"), Table::limit));

        private Table() {}

        private static Limit limit(TableRow row) {
            return new Limit(row.number("value"), row.source());
        }
    }

    private static Limit of(String name) {
        Limit limit = Table.LIMITS.get(name);
        if (limit == null) {
            throw Refusal.of("tire limit", name, "is not in the table tire/limits.csv")
                    .asException();
        }
        return limit;
    }

    /** Share of the load capacity that must be left for the check to be met. */
    static Limit loadReserve() {
        return of("load-reserve");
    }

    /** The same for a passenger car tire. */
    static Limit passengerLoadReserve() {
        return of("passenger-load-reserve");
    }

    /** Share of the symbol's speed that must be left for the check to be met. */
    static Limit speedReserve() {
        return of("speed-reserve");
    }

    /** Difference of front and rear rolling circumference above which somebody must look. */
    static Limit axleDifferenceMarginal() {
        return of("axle-difference-marginal");
    }

    /** Difference of front and rear rolling circumference that is too much. */
    static Limit axleDifferenceMost() {
        return of("axle-difference-most");
    }

    /** Difference of roll-out and maker's revolutions above which one of them is doubted. */
    static Limit measurementsDiffer() {
        return of("measurements-differ");
    }

    /** Difference of a measurement and the size above which the measurement is doubted. */
    static Limit sizeDiffers() {
        return of("size-differs");
    }

    /** Difference of a measurement and the size above which the measurement is refused. */
    static double absurdMeasurement() {
        return of("size-refuses").value();
    }
}
