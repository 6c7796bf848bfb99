package drivetrain.fuel;

import drivetrain.finding.Source;
import drivetrain.quantity.Density;
import drivetrain.quantity.Temperature;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.List;

/**
 * How a fuel expands with temperature: the volume correction factor of API MPMS chapter 11.1 (1980), table 54B.
 *
 * <p>With rho the density at 15 degC, dT = t - 15 degC and alpha = (k0 + k1 rho) / rho2 + a, the density at t is rho exp(-alpha dT (1 + 0.8 alpha dT)).
 */
final class ThermalExpansion {

    private static final double REFERENCE_CELSIUS = 15.0;

    private static final class Table {
        static final List<TableRow> ROWS =
                ReferenceTable.load("fuel/volume-correction.csv").rows();
    }

    private ThermalExpansion() {}

    /** Volume at 15 degC over volume at the temperature. */
    static double factor(Density at15, Temperature temperature) {
        double rho = at15.toKilogramsPerCubicMeter();
        TableRow group = group(rho);
        double alpha = (group.number("k0") + group.number("k1") * rho) / (rho * rho) + group.number("a");
        double rise = temperature.toCelsius() - REFERENCE_CELSIUS;
        return Math.exp(-alpha * rise * (1.0 + 0.8 * alpha * rise));
    }

    static Source source(Density at15) {
        return group(at15.toKilogramsPerCubicMeter()).source();
    }

    private static TableRow group(double rho) {
        return Table.ROWS.stream()
                .filter(row -> rho >= row.number("least") && rho < row.number("most"))
                .findFirst()
                .orElseThrow();
    }
}
