package drivetrain.driveshaft;

import drivetrain.finding.Source;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.Map;
import java.util.stream.Collectors;

/** The limits of angles and motion, read from {@code driveshaft/line-limits.csv}, which a shop can replace. */
final class LineLimits {

    private LineLimits() {}

    /** A limit with its source. */
    record Limit(double value, Source source) {}

    private static final class Table {
        static final Map<String, Limit> LIMITS = ReferenceTable.load("driveshaft/line-limits.csv").rows().stream()
                .collect(Collectors.toUnmodifiableMap(row -> row.text("limit"), Table::limit));

        private Table() {}

        private static Limit limit(TableRow row) {
            double value = row.number("value");
            return new Limit(row.text("unit").equals("deg") ? Math.toRadians(value) : value, row.source());
        }
    }

    private static Limit of(String name) {
        Limit limit = Table.LIMITS.get(name);
        if (limit == null) {
            throw Refusal.of("driveshaft limit", name, "is not in the table driveshaft/line-limits.csv")
                    .asException();
        }
        return limit;
    }

    /** Torsional acceleration at the driven end that is good, rad/s2. */
    static Limit torsionalGood() {
        return of("torsional-good");
    }

    /** Torsional acceleration at the driven end that is too much, rad/s2. */
    static Limit torsionalMost() {
        return of("torsional-most");
    }

    /** Inertial acceleration of a piece that is good, rad/s2. */
    static Limit inertialGood() {
        return of("inertial-good");
    }

    /** Inertial acceleration of a piece that is too much, rad/s2. */
    static Limit inertialMost() {
        return of("inertial-most");
    }

    /** Angle below which the needles of a joint do not turn, rad. */
    static Limit straightJoint() {
        return of("joint-angle-least");
    }

    /** Angle of a joint at ride height by the installation rule, rad. */
    static Limit ruleAngle() {
        return of("joint-angle-rule");
    }

    /** Difference of the angles of a shaft's two joints by the installation rule, rad. */
    static Limit ruleDifference() {
        return of("joint-difference-rule");
    }

    /** How far axes may leave a common plane and still count as lying in it, rad. */
    static Limit onePlane() {
        return of("one-plane");
    }

    /** Share of a joint's greatest angle that should be left over the travel. */
    static Limit angleReserve() {
        return of("joint-angle-reserve");
    }

    /** Engagement that should be left, in stub diameters, where the maker gives none. */
    static Limit engagement() {
        return of("spline-engagement");
    }

    /** How far the length of a shaft may differ from that of its line, m. */
    static Limit lengthDiffers() {
        return of("length-differs");
    }

    /** How far bushes may give, m. */
    static Limit bushGive() {
        return of("bush-give");
    }

    /** Free travel that should be left when the shaft is shortest, m. */
    static Limit bottoming() {
        return of("slip-reserve");
    }
}
