package drivetrain.gearing;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.DecimalText;
import drivetrain.table.ReferenceTable;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The ring and pinion tooth counts that the trade knows, from {@code reference-tables/gearing/axle-tooth-pairs.csv}. */
final class AxleToothPairs {

    /** A decimal with two places stands for anything that rounds to it. */
    private static final double HALF_A_PLACE = 0.005 + 1e-12;

    private AxleToothPairs() {}

    static Optional<Ratio> nearest(Ratio decimal) {
        return Pairs.ALL.stream()
                .filter(pair -> distance(pair, decimal) <= HALF_A_PLACE)
                .min(Comparator.comparingDouble(pair -> distance(pair, decimal)));
    }

    static Optional<Assumption> assumption(Ratio ratio) {
        if (ratio.isPair()) {
            return Optional.empty();
        }
        return nearest(ratio)
                .filter(pair -> pair.value() != ratio.value())
                .map(pair -> new Assumption(
                        "axle ratio",
                        "decimal " + ratio.text() + " used; the pair " + pair.text() + " would be "
                                + DecimalText.fixed(pair.value(), 4),
                        Pairs.SOURCE,
                        false));
    }

    private static double distance(Ratio pair, Ratio decimal) {
        return Math.abs(pair.value() - decimal.value());
    }

    /** Loads the table when the first decimal is looked up. */
    private static final class Pairs {
        static final List<Ratio> ALL;
        static final Source SOURCE;

        static {
            ReferenceTable table = ReferenceTable.load("gearing/axle-tooth-pairs.csv");
            ALL = table.rows().stream()
                    .map(row -> Ratio.ofTeeth(row.integer("ring"), row.integer("pinion")))
                    .toList();
            SOURCE = table.source();
        }
    }
}
