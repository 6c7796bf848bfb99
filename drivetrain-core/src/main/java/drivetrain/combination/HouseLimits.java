package drivetrain.combination;

import drivetrain.driveshaft.ShaftHouse;
import drivetrain.finding.HouseLimit;
import drivetrain.finding.HouseOrder;
import drivetrain.finding.HouseRule;
import drivetrain.finding.HouseSet;
import drivetrain.finding.Source;
import drivetrain.fuel.FuelHouse;
import drivetrain.quantity.DecimalText;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import drivetrain.table.ReferenceTable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The limits that a shop sets for itself, each a plain number with its source. All others are packed: those of {@code reference-tables/combination/house-limits.csv},
 * which belong to no room, and those that a room lets a shop set ({@link FuelHouse.Rule}, {@link ShaftHouse.Rule}).
 *
 * @param own what the shop has set, by name
 */
public record HouseLimits(Map<String, HouseLimit> own) {

    /** The least engine speed at cruise, as a multiple of idle; below it the engine is likely to lug. */
    public static final String CRUISE_LEAST_OVER_IDLE = "cruiseLeastOverIdle";

    /** The greatest engine speed at cruise, as a fraction of the maximum engine speed. */
    public static final String CRUISE_MOST_OF_MAXIMUM = "cruiseMostOfMaximum";

    private static final HouseLimits PACKED = new HouseLimits(Map.of());

    private static final class General {
        static final Map<String, HouseLimit> LIMITS =
                ReferenceTable.load("combination/house-limits.csv").rows().stream()
                        .collect(Collectors.toUnmodifiableMap(
                                row -> row.text("limit"), row -> new HouseLimit(row.number("value"), row.source())));

        private General() {}
    }

    private static final class Rooms {
        static final Map<String, HouseRule> RULES = Stream.<HouseRule[]>of(
                        FuelHouse.Rule.values(), ShaftHouse.Rule.values())
                .flatMap(Stream::of)
                .collect(Collectors.toUnmodifiableMap(HouseRule::key, Function.identity()));

        private Rooms() {}
    }

    /**
     * Copies the map and checks each number by itself. Two limits that belong together are checked by {@link #inOrder}, because they are set one after the
     * other.
     *
     * @throws RefusedException if there is no such limit, or a number is impossible
     */
    public HouseLimits {
        own = Map.copyOf(own);
        own.forEach((name, limit) -> require(name, limit.value()));
    }

    /**
     * Returns the limits that come with the library.
     *
     * @return the packed limits
     */
    public static HouseLimits packed() {
        return PACKED;
    }

    /**
     * Returns what a shop can set.
     *
     * @return the names of all limits, sorted
     */
    public static List<String> names() {
        return Stream.concat(General.LIMITS.keySet().stream(), Rooms.RULES.keySet().stream())
                .sorted()
                .toList();
    }

    /**
     * Returns a limit.
     *
     * @param name its name, a constant of this class or the key of a room's rule
     * @return what the shop has set, else the packed limit
     * @throws RefusedException if there is no such limit
     */
    public HouseLimit get(String name) {
        HouseLimit set = own.get(name);
        return set == null ? packed(name) : set;
    }

    private static HouseLimit packed(String name) {
        HouseRule rule = Rooms.RULES.get(name);
        HouseLimit limit = rule == null ? General.LIMITS.get(name) : rule.packed();
        if (limit == null) {
            throw Refusal.of("house limit", name, "is not a limit that is checked")
                    .allowing(String.join(", ", names()))
                    .suggesting(NearNames.of(name, names()))
                    .asException();
        }
        return limit;
    }

    private static void require(String name, double value) {
        HouseRule rule = Rooms.RULES.get(name);
        if (rule != null) {
            rule.require(value);
            return;
        }
        HouseLimit packed = packed(name);
        if (!(value > 0.0) || !Double.isFinite(value)) {
            throw Refusal.of("house limit " + name, Double.toString(value), "must be greater than zero")
                    .allowing("a number greater than 0; packed: " + DecimalText.shortest(packed.value()))
                    .asException();
        }
    }

    /**
     * Replaces a limit.
     *
     * @param name its name
     * @param value a number that the limit can mean
     * @param by who sets it
     * @return a copy with that limit
     * @throws RefusedException if there is no such limit, or the number is impossible
     */
    public HouseLimits with(String name, double value, String by) {
        Map<String, HouseLimit> more = new LinkedHashMap<>(own);
        more.put(name, new HouseLimit(value, Source.given(by)));
        return new HouseLimits(more);
    }

    /**
     * Checks a limit against those that it belongs together with.
     *
     * @param name its name
     * @return the same limits
     * @throws RefusedException if it contradicts one of them
     */
    public HouseLimits inOrder(String name) {
        for (HouseRule low : Rooms.RULES.values()) {
            low.ceiling()
                    .filter(high -> name.equals(low.key()) || name.equals(high.key()))
                    .map(high -> new HouseOrder(low, get(low.key()), high, get(high.key())))
                    .ifPresent(order -> order.require(name));
        }
        return this;
    }

    /**
     * Returns the limits of a fuel supply.
     *
     * @return those of the shop, where it has set some
     */
    public FuelHouse fuel() {
        return new FuelHouse(HouseSet.of(FuelHouse.Rule.class, rule -> get(rule.key())));
    }

    /**
     * Returns the limits of the driveshafts.
     *
     * @return those of the shop, where it has set some
     * @throws RefusedException if two of them contradict each other
     */
    public ShaftHouse driveshafts() {
        return new ShaftHouse(HouseSet.of(ShaftHouse.Rule.class, rule -> get(rule.key())));
    }
}
