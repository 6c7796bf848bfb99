package drivetrain.combination;

import drivetrain.finding.Source;
import drivetrain.fuel.FuelHouse;
import drivetrain.quantity.DecimalText;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The limits that a shop sets for itself, each a plain number with its source. The packed ones are in {@code reference-tables/combination/house-limits.csv} and, for the
 * fuel supply, in {@code reference-tables/fuel/limits.csv}; a shop replaces any of them in its catalog.
 *
 * @param values the limits by name
 */
public record HouseLimits(Map<String, Limit> values) {

    /** The least engine speed at cruise, as a multiple of idle; below it the engine is likely to lug. */
    public static final String CRUISE_LEAST_OVER_IDLE = "cruiseLeastOverIdle";

    /** The greatest engine speed at cruise, as a fraction of the maximum engine speed. */
    public static final String CRUISE_MOST_OF_MAXIMUM = "cruiseMostOfMaximum";

    private static final class Packed {
        static final HouseLimits LIMITS = read(ReferenceTable.load("combination/house-limits.csv"));
    }

    /**
     * One limit.
     *
     * @param value the number
     * @param source who set it
     */
    public record Limit(double value, Source source) {}

    /** Copies the map. */
    public HouseLimits {
        values = Map.copyOf(values);
    }

    /**
     * Returns the limits that come with the library.
     *
     * @return the packed limits
     */
    public static HouseLimits packed() {
        return Packed.LIMITS;
    }

    private static HouseLimits read(ReferenceTable table) {
        Map<String, Limit> values = new LinkedHashMap<>();
        for (TableRow row : table.rows()) {
            values.put(row.text("limit"), new Limit(row.number("value"), row.source()));
        }
        FuelHouse.packed()
                .values()
                .forEach((rule, value) -> values.put(rule.key(), new Limit(value.value(), value.source())));
        return new HouseLimits(values);
    }

    /**
     * Returns a limit.
     *
     * @param name its name, one of the constants of this class
     * @return the limit
     * @throws drivetrain.refusal.RefusedException if there is no such limit
     */
    public Limit get(String name) {
        Limit limit = values.get(name);
        if (limit == null) {
            throw unknown(name);
        }
        return limit;
    }

    /**
     * Replaces a limit.
     *
     * @param name its name
     * @param value a finite number greater than zero
     * @param by who sets it
     * @return a copy with that limit
     * @throws drivetrain.refusal.RefusedException if there is no such limit, or the number is impossible
     */
    public HouseLimits with(String name, double value, String by) {
        if (!values.containsKey(name)) {
            throw unknown(name);
        }
        if (!(value > 0.0) || !Double.isFinite(value)) {
            throw Refusal.of("house limit " + name, Double.toString(value), "must be greater than zero")
                    .allowing("a number greater than 0; packed: "
                            + DecimalText.shortest(get(name).value()))
                    .asException();
        }
        FuelHouse.Rule.ofKey(name).ifPresent(rule -> rule.require(value));
        Map<String, Limit> more = new LinkedHashMap<>(values);
        more.put(name, new Limit(value, Source.given(by)));
        return new HouseLimits(more);
    }

    /**
     * Returns the limits of a fuel supply.
     *
     * @return those of the shop, where it has set some
     */
    public FuelHouse fuel() {
        Map<FuelHouse.Rule, FuelHouse.Value> own = new EnumMap<>(FuelHouse.Rule.class);
        for (FuelHouse.Rule rule : FuelHouse.Rule.values()) {
            Limit limit = get(rule.key());
            own.put(rule, new FuelHouse.Value(limit.value(), limit.source()));
        }
        return new FuelHouse(own);
    }

    private drivetrain.refusal.RefusedException unknown(String name) {
        return Refusal.of("house limit", name, "is not a limit that is checked")
                .allowing(String.join(", ", values.keySet().stream().sorted().toList()))
                .suggesting(NearNames.of(name, values.keySet()))
                .asException();
    }
}
