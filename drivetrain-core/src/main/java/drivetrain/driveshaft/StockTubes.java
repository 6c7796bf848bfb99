package drivetrain.driveshaft;

import drivetrain.finding.Source;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.List;

/** The tubes of the table {@code driveshaft/stock-tubes.csv}. */
public final class StockTubes {

    private StockTubes() {}

    /**
     * A tube that shops stock.
     *
     * @param tube the tube
     * @param metal what it is made of
     * @param source who says so
     */
    public record StockTube(Tube tube, ShaftMetal metal, Source source) {

        /**
         * Returns the name by which the trade calls it.
         *
         * @return diameter and wall in inches, and the metal
         */
        public String name() {
            return DecimalText.significant(tube.diameter().toInches(), 6) + " x "
                    + DecimalText.significant(tube.wall().toInches(), 6) + " " + metal.name();
        }
    }

    private static final class Table {
        static final List<StockTube> TUBES = ReferenceTable.load("driveshaft/stock-tubes.csv").rows().stream()
                .map(Table::tube)
                .toList();

        private Table() {}

        private static StockTube tube(TableRow row) {
            String name = row.text("material");
            ShaftMetal metal = StockMaterials.all().stream()
                    .filter(known -> known.name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> Refusal.of("stock tube", name, "is not in driveshaft/materials.csv")
                            .in(row.place())
                            .asException());
            Tube tube = Tube.of(Length.ofInches(row.number("diameter")), Length.ofInches(row.number("wall")));
            return new StockTube(tube, metal, row.source());
        }
    }

    /**
     * Lists the tubes.
     *
     * @return the tubes in the order of the table: by metal, then rising by diameter and wall
     */
    public static List<StockTube> all() {
        return Table.TUBES;
    }
}
