package drivetrain.driveshaft;

import drivetrain.finding.Source;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import java.util.Map;
import java.util.stream.Collectors;

/** The limits of speed and torque, read from {@code driveshaft/speed-limits.csv}, which a shop can replace. */
final class ShaftSpeedLimits {

    private ShaftSpeedLimits() {}

    /** A limit with its source. */
    record Limit(double value, Source source) {}

    private static final class Table {
        static final Map<String, Limit> LIMITS = ReferenceTable.load("driveshaft/speed-limits.csv").rows().stream()
                .collect(Collectors.toUnmodifiableMap(
                        row -> row.text("limit"), row -> new Limit(row.number("value"), row.source())));

        private Table() {}
    }

    private static Limit of(String name) {
        Limit limit = Table.LIMITS.get(name);
        if (limit == null) {
            throw Refusal.of("driveshaft limit", name, "is not in the table driveshaft/speed-limits.csv")
                    .asException();
        }
        return limit;
    }

    /** Share of the critical speed that is good on the road. */
    static Limit criticalFraction() {
        return of("critical-fraction");
    }

    /** Share of the critical speed that is too much. */
    static Limit criticalFractionMost() {
        return of("critical-fraction-most");
    }

    /** How near, as a share of it, half the critical speed may come to a speed that is held. */
    static Limit halfCriticalBand() {
        return of("half-critical-band");
    }

    /** Joint angle above which half the critical speed matters, degrees. */
    static Limit halfCriticalAngle() {
        return of("half-critical-angle");
    }

    /** Factor against yield that should be left. */
    static Limit yieldFactor() {
        return of("yield-factor");
    }

    /** Share of a supplier's torque rating that should be left. */
    static Limit ratingReserve() {
        return of("rating-reserve");
    }

    /** How far, as a share, a vibration may be off and still fits a measured frequency. */
    static Limit orderTolerance() {
        return of("order-tolerance");
    }
}
