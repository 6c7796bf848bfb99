package drivetrain.tire;

import drivetrain.finding.Source;
import drivetrain.quantity.Speed;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A speed symbol: the greatest speed at which a tire carries the load of its load index.
 *
 * <p>The order is not that of the alphabet: H (210 km/h) stands between U (200) and V (240); I, O and X do not exist.
 *
 * @param text the symbol, {@code A1} to {@code A8} or one letter, in upper case
 */
public record SpeedSymbol(String text) {

    /**
     * Takes the symbol in upper case.
     *
     * @throws drivetrain.refusal.RefusedException if there is no such symbol
     */
    public SpeedSymbol {
        String typed = text;
        text = text.toUpperCase(Locale.ROOT);
        if (!isKnown(text)) {
            throw Refusal.of("speed symbol", typed, "does not exist")
                    .allowing(allowed())
                    .asException();
        }
    }

    /**
     * Returns the greatest speed.
     *
     * @return the speed
     */
    public Speed speed() {
        return Table.speed(text);
    }

    /**
     * Returns the symbol as a tire is marked.
     *
     * @return the symbol
     */
    @Override
    public String toString() {
        return text;
    }

    static boolean isKnown(String symbol) {
        return Table.SPEEDS.containsKey(symbol);
    }

    static String allowed() {
        return Table.ALLOWED;
    }

    static Source source() {
        return Table.SOURCE;
    }

    /** Read once, when the first symbol is read. */
    private static final class Table {
        static final Source SOURCE;
        static final Map<String, Speed> SPEEDS = new LinkedHashMap<>();
        static final String ALLOWED;

        static {
            ReferenceTable read = ReferenceTable.load("tire/speed-symbol.csv");
            SOURCE = read.source();
            read.rows().forEach(row -> SPEEDS.put(row.text("symbol"), Speed.ofKilometersPerHour(row.number("speed"))));
            ALLOWED = SPEEDS.keySet().stream()
                    .filter(symbol -> symbol.length() == 1)
                    .collect(Collectors.joining(" ", "A1 to A8, ", ""));
        }

        private Table() {}

        static Speed speed(String symbol) {
            Speed speed = SPEEDS.get(symbol);
            if (speed == null) {
                throw new IllegalStateException("no speed for " + symbol);
            }
            return speed;
        }
    }
}
