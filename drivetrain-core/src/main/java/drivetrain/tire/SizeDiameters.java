package drivetrain.tire;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Length;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The table of sizes whose diameter does not follow from their designation. */
final class SizeDiameters {

    private SizeDiameters() {}

    private record Row(Length diameter, Assumption assumption) {

        static Row of(TableRow row) {
            String size = row.text("size");
            return new Row(
                    Length.ofMillimeters(row.number("diameter")),
                    Assumption.of(
                            "overall diameter",
                            "the overall diameter of " + size + " is taken from the table of sizes, "
                                    + row.text("diameter") + " mm",
                            row.source()));
        }
    }

    /** Read once, when the first size without a formula is asked for. */
    private static final class Table {
        static final Map<String, Row> ROWS = ReferenceTable.load("tire/size-diameter.csv").rows().stream()
                .collect(Collectors.toUnmodifiableMap(row -> row.text("size"), Row::of));

        private Table() {}
    }

    /** Looks the first key up that the table has. */
    static Optional<OverallDiameter> find(TireDesignation designation, List<String> keys) {
        return keys.stream()
                .map(Table.ROWS::get)
                .filter(Objects::nonNull)
                .findFirst()
                .map(row -> new OverallDiameter(
                        row.diameter, DiameterBasis.SIZE_TABLE, designation, List.of(row.assumption)));
    }

    static Outcome<OverallDiameter> of(TireDesignation designation, List<String> keys, String otherwise) {
        return find(designation, keys)
                .map((Function<OverallDiameter, Outcome<OverallDiameter>>) Outcome::of)
                .orElseGet(() -> Outcome.notEvaluated("the tire size " + designation.size() + " " + otherwise
                        + "; give its measured or published overall diameter, roll-out or revolutions"));
    }
}
