package drivetrain.finding;

import drivetrain.refusal.Refusal;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;

/**
 * What is set for every rule of a room.
 *
 * @param rules the rules of the room
 * @param values what is set for each
 * @param <R> the type of the rules
 */
public record HouseSet<R extends Enum<R> & HouseRule>(Class<R> rules, Map<R, HouseLimit> values) {

    /**
     * Copies the map and checks it.
     *
     * @throws drivetrain.refusal.RefusedException if a rule is not set, a number is out of range, or two limits contradict each other
     */
    public HouseSet {
        values = Map.copyOf(values);
        for (R rule : rules.getEnumConstants()) {
            HouseLimit own = require(values, rule);
            rule.require(own.value());
            if (rule.ceiling().isPresent()) {
                HouseRule ceiling = rule.ceiling().get();
                new HouseOrder(rule, own, ceiling, require(values, ceiling)).require(rule.key());
            }
        }
    }

    private static HouseLimit require(Map<? extends HouseRule, HouseLimit> values, HouseRule rule) {
        HouseLimit limit = values.get(rule);
        if (limit == null) {
            throw Refusal.of("house limit", rule.key(), "is not set").asException();
        }
        return limit;
    }

    /**
     * Asks for the limit of every rule.
     *
     * @param rules the rules of the room
     * @param limit tells what is set for one
     * @param <R> the type of the rules
     * @return the limits
     * @throws drivetrain.refusal.RefusedException if a number is out of range, or two limits contradict each other
     */
    public static <R extends Enum<R> & HouseRule> HouseSet<R> of(Class<R> rules, Function<R, HouseLimit> limit) {
        Map<R, HouseLimit> values = new EnumMap<>(rules);
        for (R rule : rules.getEnumConstants()) {
            values.put(rule, limit.apply(rule));
        }
        return new HouseSet<>(rules, values);
    }

    /**
     * Returns the limits that come with the library.
     *
     * @param rules the rules of the room
     * @param <R> the type of the rules
     * @return the packed limits
     */
    public static <R extends Enum<R> & HouseRule> HouseSet<R> packed(Class<R> rules) {
        return of(rules, HouseRule::packed);
    }

    /**
     * Returns what is set for a rule.
     *
     * @param rule the rule
     * @return the number with who set it
     */
    public HouseLimit of(R rule) {
        return require(values, rule);
    }
}
