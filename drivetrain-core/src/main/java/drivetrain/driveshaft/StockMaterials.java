package drivetrain.driveshaft;

import drivetrain.quantity.Density;
import drivetrain.quantity.Pressure;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.List;
import java.util.Optional;

/** The metals of the table {@code driveshaft/materials.csv}. */
public final class StockMaterials {

    private StockMaterials() {}

    private static final class Table {
        static final List<ShaftMetal> METALS = ReferenceTable.load("driveshaft/materials.csv").rows().stream()
                .map(Table::metal)
                .toList();

        private Table() {}

        private static ShaftMetal metal(TableRow row) {
            Optional<Pressure> yield = row.text("yield").isEmpty()
                    ? Optional.empty()
                    : Optional.of(Pressure.ofMegapascals(row.number("yield")));
            return new ShaftMetal(
                    row.text("name"),
                    Pressure.ofGigapascals(row.number("modulus")),
                    row.number("poisson"),
                    Density.ofKilogramsPerCubicMeter(row.number("density")),
                    yield,
                    row.source());
        }
    }

    /**
     * Lists the metals.
     *
     * @return the metals in the order of the table
     */
    public static List<ShaftMetal> all() {
        return Table.METALS;
    }

    /**
     * Lists the names.
     *
     * @return the names in the order of the table
     */
    public static List<String> names() {
        return all().stream().map(ShaftMetal::name).toList();
    }

    /**
     * Finds a metal by its name.
     *
     * @param name the name, upper and lower case alike; {@code aluminium} is read as {@code aluminum}
     * @return the metal, or empty
     */
    public static Optional<ShaftMaterial> named(String name) {
        String wanted = name.strip().replaceFirst("(?i)^aluminium", "aluminum");
        return all().stream()
                .filter(metal -> metal.name().equalsIgnoreCase(wanted))
                .<ShaftMaterial>map(metal -> metal)
                .findFirst();
    }

    /**
     * Lists the grades of a metal whose name alone tells no strength.
     *
     * @param name the name, such as {@code steel}
     * @return the names of the grades with a yield strength, such as {@code steel-4130}, in the order of the table
     */
    static List<String> gradesOf(String name) {
        return all().stream()
                .filter(metal ->
                        metal.name().startsWith(name + "-") && metal.yield().isPresent())
                .map(ShaftMetal::name)
                .toList();
    }
}
