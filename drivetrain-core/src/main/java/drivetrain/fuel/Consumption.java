package drivetrain.fuel;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.SpecificFuelConsumption;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.List;

/**
 * How much fuel an engine burns for its work: a window, because few engines were measured.
 *
 * @param least the least that is usual
 * @param most the most that is usual; what a supply is sized by
 * @param assumptions what the window rests on
 * @param source where it comes from
 */
public record Consumption(
        SpecificFuelConsumption least, SpecificFuelConsumption most, List<Assumption> assumptions, Source source) {

    private static final SpecificFuelConsumption LEAST = SpecificFuelConsumption.ofPoundsPerHorsepowerHour(0.2);
    private static final SpecificFuelConsumption MOST = SpecificFuelConsumption.ofPoundsPerHorsepowerHour(1.5);

    private static final class Table {
        static final List<TableRow> ROWS =
                ReferenceTable.load("fuel/consumption.csv").rows();
    }

    /**
     * Checks the range, 0.2 to 1.5 lb/(hp·h), and copies the list.
     *
     * @throws drivetrain.refusal.RefusedException if a bound is out of range
     */
    public Consumption {
        requirePlausible(least);
        requirePlausible(most);
        assumptions = List.copyOf(assumptions);
    }

    static SpecificFuelConsumption requirePlausible(SpecificFuelConsumption consumption) {
        return consumption.requireBetween(
                "specific fuel consumption", LEAST, MOST, SpecificFuelConsumption.POUND_PER_HORSEPOWER_HOUR);
    }

    /**
     * Returns the usual consumption at full load.
     *
     * @param engine the kind of engine
     * @param fuel the fuel; ethanol raises the consumption in the measure that it holds less heat
     * @return the window, flagged
     */
    public static Consumption full(EngineKind engine, Fuel fuel) {
        return usual(engine, fuel, "full", "at full load");
    }

    /**
     * Returns the usual consumption at a steady part load.
     *
     * @param engine the kind of engine
     * @param fuel the fuel
     * @return the window, flagged
     */
    public static Consumption cruise(EngineKind engine, Fuel fuel) {
        return usual(engine, fuel, "cruise", "at a cruise");
    }

    /**
     * Makes a window of a measured value.
     *
     * @param measured the consumption of this engine with this fuel
     * @return the window, which is one value
     * @throws drivetrain.refusal.RefusedException if it is out of range
     */
    public static Consumption of(SpecificFuelConsumption measured) {
        return new Consumption(measured, measured, List.of(), Source.given("the order's specific fuel consumption"));
    }

    private static Consumption usual(EngineKind engine, Fuel fuel, String load, String words) {
        TableRow row = Table.ROWS.stream()
                .filter(one -> one.text("engine").equals(engine.word())
                        && one.text("load").equals(load))
                .findFirst()
                .orElseThrow();
        double factor = fuel.consumptionFactor();
        SpecificFuelConsumption least = SpecificFuelConsumption.ofPoundsPerHorsepowerHour(row.number("least"));
        SpecificFuelConsumption most = SpecificFuelConsumption.ofPoundsPerHorsepowerHour(row.number("most"));
        String ethanol = factor == 1.0
                ? ""
                : ", times " + DecimalText.fixed(factor, 2) + " for the ethanol, at equal efficiency";
        Assumption assumption = Assumption.flagged(
                "specific fuel consumption " + words,
                "the engine (" + engine.label() + ") burns " + row.text("least") + " to " + row.text("most")
                        + " lb/(hp h) " + words + ethanol,
                row.source());
        return new Consumption(least.times(factor), most.times(factor), List.of(assumption), row.source());
    }
}
