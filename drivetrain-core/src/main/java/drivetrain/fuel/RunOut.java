package drivetrain.fuel;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Power;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a part of the supply allows before it runs out.
 *
 * @param part the part
 * @param power the engine power at which it runs out; not evaluated where it limits nothing or something is missing
 */
public record RunOut(Part part, Outcome<Power> power) {

    /** A part of the supply that can run out. */
    public enum Part {
        /** The pump as it would be with lines that cost nothing. */
        PUMP_ALONE("pump alone"),
        /** The pump through its lines. */
        PUMP_THROUGH_LINES("pump through its lines"),
        /** The way of the fuel to the pump. */
        SUCTION("suction side"),
        /** The injectors. */
        INJECTORS("injectors");

        private final String label;

        Part(String label) {
            this.label = label;
        }

        /**
         * Returns the words of the trade.
         *
         * @return the label
         */
        public String label() {
            return label;
        }
    }

    /**
     * Returns what runs out first.
     *
     * @param parts the parts
     * @return the part with the least power; empty if no power is known
     */
    public static Optional<RunOut> first(List<RunOut> parts) {
        return parts.stream()
                .filter(part ->
                        part.part() != Part.PUMP_ALONE && part.power().value().isPresent())
                .min(Comparator.comparing(part -> part.power().orThrow()));
    }
}
