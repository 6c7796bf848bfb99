package drivetrain.fuel;

import drivetrain.finding.HouseLimit;
import drivetrain.finding.HouseRange;
import drivetrain.finding.HouseRule;
import drivetrain.finding.HouseSet;
import drivetrain.finding.Source;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Voltage;

/**
 * The limits of a fuel supply that a shop can set for itself. The packed ones are those of {@code reference-tables/fuel/limits.csv}.
 *
 * @param limits what is set for every rule
 */
public record FuelHouse(HouseSet<Rule> limits) {

    /** What a shop can set. */
    public enum Rule implements HouseRule {
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

        @SuppressWarnings("ImmutableEnumChecker") // HouseRange is a record of numbers
        private final HouseRange range;

        Rule(String key, String row, double greatest) {
            this.key = key;
            this.row = row;
            this.range = HouseRange.above(0.0, greatest);
        }

        @Override
        public String key() {
            return key;
        }

        @Override
        public HouseRange range() {
            return range;
        }

        /** A margin is the least that is kept, everything else the most. */
        @Override
        public HouseLimit packed() {
            FuelLimit limit = FuelLimit.of(row);
            return new HouseLimit(this == BOILING ? limit.least() : limit.most(), limit.source());
        }
    }

    private static final class Packed {
        static final FuelHouse HOUSE = new FuelHouse(HouseSet.packed(Rule.class));

        private Packed() {}
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
    public HouseLimit of(Rule rule) {
        return limits.of(rule);
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
