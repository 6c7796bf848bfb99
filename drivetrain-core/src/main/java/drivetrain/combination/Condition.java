package drivetrain.combination;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** What an order says of how the package is driven, besides its parts. */
public enum Condition {
    /** The road speed that the customer asked about. */
    CRUISE("cruise", "asked cruise", Specification::cruise, Specification::cruisingAt),
    /** What it is driven on. */
    SURFACE("surface", "surface", Specification::surface, Specification::drivenOn),
    /** The air that it is driven in. */
    AIR("air", "air", Specification::air, Specification::drivenIn),
    /** The road speed at which a speed limiter holds it. */
    LIMITER("speedLimiter", "speed limiter", Specification::limiter, Specification::limitedTo);

    private final String key;
    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // method references to an immutable record
    private final Function<Specification, Optional<String>> reader;

    @SuppressWarnings("ImmutableEnumChecker")
    private final BiFunction<Specification, String, Specification> writer;

    Condition(
            String key,
            String word,
            Function<Specification, Optional<String>> reader,
            BiFunction<Specification, String, Specification> writer) {
        this.key = key;
        this.word = word;
        this.reader = reader;
        this.writer = writer;
    }

    /**
     * Returns the machine name, as files have it.
     *
     * @return a lower-case letter, then letters
     */
    public String key() {
        return key;
    }

    /**
     * Returns the words for it.
     *
     * @return the words, in lower case
     */
    public String word() {
        return word;
    }

    /**
     * Returns what an order says.
     *
     * @param order the order
     * @return the text as written, or empty
     */
    public Optional<String> in(Specification order) {
        return reader.apply(order);
    }

    /**
     * Says it in an order.
     *
     * @param order the order
     * @param text the text; it is not read here
     * @return a copy of the order that says so
     */
    public Specification in(Specification order, String text) {
        return writer.apply(order, text);
    }
}
