package drivetrain.fuel;

import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Volume;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.List;

/**
 * The vapor that a tank makes on a day without driving, in the form of Wade and Reddy with the coefficients of the US EPA's MOVES model: grams per US gallon of vapor space =
 * a exp(b R) (exp(c t2) - exp(c t1)), R the Reid vapor pressure in psi, t in degF.
 *
 * <p>The model knows gasoline without ethanol and with 10 %, at a low and a high altitude; the high coefficients are taken from 1219 m (4000 ft) on.
 */
public final class TankVapor {

    /** Where the model's high altitude begins, 4000 ft; from memory, the threshold of US federal test procedures. */
    private static final Length HIGH_ALTITUDE = Length.ofFeet(4000.0);

    private static final double MOST_ETHANOL = 0.15;
    private static final double LEAST_E10 = 0.05;

    private static final class Table {
        static final ReferenceTable TABLE = ReferenceTable.load("fuel/daily-vapor.csv");
    }

    private TankVapor() {}

    /**
     * Returns the vapor of a day.
     *
     * @param fuel the fuel
     * @param vaporSpace the volume of the tank above the fuel
     * @param day the coldest and the hottest temperature of the fuel
     * @param elevation the elevation above sea level
     * @return the mass of the vapor; not evaluated for a fuel that the model does not know
     */
    public static Outcome<Mass> ofDay(Fuel fuel, Volume vaporSpace, Tank.Day day, Length elevation) {
        if (fuel.ethanol() > MOST_ETHANOL) {
            return Outcome.notEvaluated("the model of the daily vapor knows gasoline with up to 15 % ethanol only");
        }
        return Outcome.of(
                        fuel.reidVaporPressure(),
                        fuel.family() == FuelFamily.DIESEL
                                ? "diesel hardly evaporates"
                                : "the fuel's Reid vapor pressure is not given")
                .map(reid -> mass(row(fuel, elevation), reid, vaporSpace, day));
    }

    private static TableRow row(Fuel fuel, Length elevation) {
        String ethanol = fuel.ethanol() < LEAST_E10 ? "0" : "10";
        String altitude = elevation.isLessThan(HIGH_ALTITUDE) ? "low" : "high";
        List<TableRow> rows = Table.TABLE.rows();
        return rows.stream()
                .filter(row -> row.text("ethanol").equals(ethanol)
                        && row.text("altitude").equals(altitude))
                .findFirst()
                .orElseThrow();
    }

    private static Mass mass(TableRow row, Pressure reid, Volume vaporSpace, Tank.Day day) {
        double c = row.number("c");
        double grams = row.number("a")
                * Math.exp(row.number("b") * reid.toPsi())
                * (Math.exp(c * day.hottest().toFahrenheit())
                        - Math.exp(c * day.coldest().toFahrenheit()))
                * vaporSpace.toUsGallons();
        return Mass.ofGrams(grams);
    }

    /**
     * Returns where the model comes from.
     *
     * @return the source
     */
    public static Source source() {
        return Table.TABLE.source();
    }
}
