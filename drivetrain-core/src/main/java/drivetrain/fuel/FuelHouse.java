package drivetrain.fuel;

import drivetrain.finding.Source;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Voltage;
import drivetrain.refusal.Refusal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * The limits of a fuel supply that a shop can set for itself. The packed ones are those of {@code reference-tables/fuel/limits.csv}.
 *
 * @param values what is set for every rule
 */
public record FuelHouse(Map<Rule, Value> values) {

    /** What a shop can set. */
    public enum Rule {
        /** The flow to spare above the demand, as a fraction of the demand. */
        MARGIN("supplyMarginLeast", "demand-margin", 1.0),
        /** How long the injectors may be open, as a fraction of the time. */
        DUTY("injectorDutyMost", "injector-duty", 1.0),
        /** What the feed line may cost, in kPa. */
        FEED_LOSS("feedLossMostKilopascals", "feed-loss", 1000.0),
        /** What the return line may cost with the whole flow of the pump, in kPa. */
        RETURN_LOSS("returnLossMostKilopascals", "return-loss", 1000.0),
        /** How far the pressure at the pump's inlet has to stay above that at which the fuel boils, in kPa. */
        BOILING("boilingMarginLeastKilopascals", "suction-margin", 100.0),
        /** How fast the fuel may flow in a pressure line, in m/s. */
        FEED_SPEED("feedSpeedMostMetersPerSecond", "feed-speed", 20.0),
        /** How fast the fuel may flow in a line ahead of the pump, in m/s. */
        SUCTION_SPEED("suctionSpeedMostMetersPerSecond", "suction-speed", 20.0),
        /** What the pump's wires may cost, in V. */
        WIRE_LOSS("pumpWireLossMostVolts", "wire-loss", 10.0);

        private final String key;
        private final String row;
        private final double greatest;

        Rule(String key, String row, double greatest) {
            this.key = key;
            this.row = row;
            this.greatest = greatest;
        }

        /**
         * Returns the name by which a catalog sets it.
         *
         * @return the name, which ends with its unit where it has one
         */
        public String key() {
            return key;
        }

        /**
         * Finds a rule by its name.
         *
         * @param key the name
         * @return the rule, or empty
         */
        public static Optional<Rule> ofKey(String key) {
            return Arrays.stream(values()).filter(rule -> rule.key.equals(key)).findFirst();
        }

        /**
         * Checks what a shop wants to set.
         *
         * @param value the number in the unit of the rule
         * @throws drivetrain.refusal.RefusedException if it is not above zero or more than the rule can mean
         */
        public void require(double value) {
            if (!(value > 0.0 && value <= greatest)) {
                String given = Double.isFinite(value) ? DecimalText.shortest(value) : Double.toString(value);
                throw Refusal.of("house limit " + key, given, "is out of range")
                        .allowing("more than 0, at most " + DecimalText.shortest(greatest) + "; packed: "
                                + DecimalText.shortest(packed().value()))
                        .asException();
            }
        }

        /** A margin is the least that is kept, everything else the most. */
        private Value packed() {
            FuelLimit limit = FuelLimit.of(row);
            return new Value(this == BOILING ? limit.least() : limit.most(), limit.source());
        }
    }

    /**
     * What is set for a rule.
     *
     * @param value the number in the unit of the rule
     * @param source who set it
     */
    public record Value(double value, Source source) {}

    private static final class Packed {
        static final FuelHouse HOUSE = read();

        private Packed() {}

        private static FuelHouse read() {
            Map<Rule, Value> values = new EnumMap<>(Rule.class);
            for (Rule rule : Rule.values()) {
                values.put(rule, rule.packed());
            }
            return new FuelHouse(values);
        }
    }

    /**
     * Copies the map and checks it.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range or a rule is missing
     */
    public FuelHouse {
        values = Map.copyOf(values);
        for (Rule rule : Rule.values()) {
            require(values, rule);
        }
    }

    private static Value require(Map<Rule, Value> values, Rule rule) {
        Value value = values.get(rule);
        if (value == null) {
            throw Refusal.of("house limit", rule.key(), "is not set").asException();
        }
        rule.require(value.value());
        return value;
    }

    /**
     * Returns the limits that come with the library.
     *
     * @return the packed limits
     */
    public static FuelHouse packed() {
        return Packed.HOUSE;
    }

    /**
     * Returns what is set for a rule.
     *
     * @param rule the rule
     * @return the number with who set it
     */
    public Value of(Rule rule) {
        return require(values, rule);
    }

    /**
     * Returns where a limit comes from.
     *
     * @param rule the rule
     * @return the source
     */
    public Source source(Rule rule) {
        return of(rule).source();
    }

    /**
     * Returns what the feed line may cost.
     *
     * @return the loss
     */
    public Pressure feedLoss() {
        return Pressure.ofKilopascals(of(Rule.FEED_LOSS).value());
    }

    /**
     * Returns what the return line may cost.
     *
     * @return the loss
     */
    public Pressure returnLoss() {
        return Pressure.ofKilopascals(of(Rule.RETURN_LOSS).value());
    }

    /**
     * Returns how far the pressure at the pump's inlet has to stay above boiling.
     *
     * @return the pressure
     */
    public Pressure boiling() {
        return Pressure.ofKilopascals(of(Rule.BOILING).value());
    }

    /**
     * Returns how fast the fuel may flow.
     *
     * @param suction true for a line ahead of the pump
     * @return the speed
     */
    public Speed speed(boolean suction) {
        return Speed.ofMetersPerSecond(of(speedRule(suction)).value());
    }

    /**
     * Returns which rule holds the speed of the fuel.
     *
     * @param suction true for a line ahead of the pump
     * @return the rule
     */
    public static Rule speedRule(boolean suction) {
        return suction ? Rule.SUCTION_SPEED : Rule.FEED_SPEED;
    }

    /**
     * Returns what the pump's wires may cost.
     *
     * @return the voltage
     */
    public Voltage wireLoss() {
        return Voltage.ofVolts(of(Rule.WIRE_LOSS).value());
    }
}
