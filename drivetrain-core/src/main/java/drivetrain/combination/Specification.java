package drivetrain.combination;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A drivetrain package as written: for each slot the catalog name or the literal that was chosen, word for word.
 *
 * @param title the title of the order; may be empty
 * @param choices the text chosen for each slot that is filled, in the order of the slots
 * @param cruise the road speed that the customer asked about, as written
 * @param surface what it is driven on, as written
 * @param air the air that it is driven in, as written
 * @param limiter the road speed at which a speed limiter holds it, as written
 * @param notes free text; may be empty
 */
public record Specification(
        String title,
        Map<Slot, String> choices,
        Optional<String> cruise,
        Optional<String> surface,
        Optional<String> air,
        Optional<String> limiter,
        String notes) {

    private static final Specification EMPTY =
            new Specification("", Map.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "");

    /** Copies the choices into the order of the slots. */
    public Specification {
        choices = Collections.unmodifiableMap(copy(choices));
    }

    private static Map<Slot, String> copy(Map<Slot, String> choices) {
        if (choices instanceof EnumMap<Slot, String> ordered) {
            return ordered.clone();
        }
        Map<Slot, String> ordered = new EnumMap<>(Slot.class);
        ordered.putAll(choices);
        return ordered;
    }

    /**
     * Returns a specification in which nothing is chosen.
     *
     * @return the empty specification
     */
    public static Specification empty() {
        return EMPTY;
    }

    /**
     * Returns what was chosen for a slot.
     *
     * @param slot the slot
     * @return the text, or empty
     */
    public Optional<String> choice(Slot slot) {
        return Optional.ofNullable(choices.get(slot));
    }

    /**
     * Chooses a part.
     *
     * @param slot the slot
     * @param text a catalog name or a literal; it is not looked up here
     * @return a copy with that choice
     */
    public Specification with(Slot slot, String text) {
        Map<Slot, String> more = copy(choices);
        more.put(slot, text);
        return new Specification(title, more, cruise, surface, air, limiter, notes);
    }

    /**
     * Empties a slot.
     *
     * @param slot the slot
     * @return a copy without that choice
     */
    public Specification without(Slot slot) {
        if (!choices.containsKey(slot)) {
            return this;
        }
        Map<Slot, String> fewer = copy(choices);
        fewer.remove(slot);
        return new Specification(title, fewer, cruise, surface, air, limiter, notes);
    }

    /**
     * Names the order.
     *
     * @param name the title
     * @return a copy with that title
     */
    public Specification titled(String name) {
        return new Specification(name, choices, cruise, surface, air, limiter, notes);
    }

    /**
     * Notes the road speed that the customer asked about.
     *
     * @param speed the speed as written, such as {@code 65 mph}
     * @return a copy with that speed
     */
    public Specification cruisingAt(String speed) {
        return new Specification(title, choices, Optional.of(speed), surface, air, limiter, notes);
    }

    /**
     * Says what the package is driven on.
     *
     * @param name the surface as written, such as {@code wet asphalt}
     * @return a copy with that surface
     */
    public Specification drivenOn(String name) {
        return new Specification(title, choices, cruise, Optional.of(name), air, limiter, notes);
    }

    /**
     * Says which air the package is driven in.
     *
     * @param text the air as written, such as {@code altitude 1500 m temperature 30 degC}
     * @return a copy with that air
     */
    public Specification drivenIn(String text) {
        return new Specification(title, choices, cruise, surface, Optional.of(text), limiter, notes);
    }

    /**
     * Says at which road speed a speed limiter holds the vehicle.
     *
     * @param speed the speed as written, such as {@code 105 mph}
     * @return a copy with that limiter
     */
    public Specification limitedTo(String speed) {
        return new Specification(title, choices, cruise, surface, air, Optional.of(speed), notes);
    }

    /**
     * Takes a speed limiter away.
     *
     * @return a copy without a limiter
     */
    public Specification unlimited() {
        return new Specification(title, choices, cruise, surface, air, Optional.empty(), notes);
    }

    /**
     * Adds free text.
     *
     * @param text the notes
     * @return a copy with these notes
     */
    public Specification noting(String text) {
        return new Specification(title, choices, cruise, surface, air, limiter, text);
    }
}
