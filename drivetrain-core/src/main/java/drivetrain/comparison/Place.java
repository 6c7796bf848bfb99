package drivetrain.comparison;

import drivetrain.combination.PartKind;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What one list of parts is for: a slot, or both axles alike.
 *
 * @param word the trade's word
 * @param slots the slots that the part fills; the first one gives the kind of part
 */
public record Place(String word, List<Slot> slots) {

    /** Both axles, which on a vehicle with front drive must turn alike. */
    public static final Place AXLES = new Place("axle", List.of(Slot.REAR_AXLE, Slot.FRONT_AXLE));

    private static final Map<String, String> SYNONYMS = Map.ofEntries(
            Map.entry("transfer", "transfer case"),
            Map.entry("gearbox", "transmission"),
            Map.entry("trans", "transmission"),
            Map.entry("motor", "engine"),
            Map.entry("axles", "axle"),
            Map.entry("diff", "axle"),
            Map.entry("hubs", "hub reduction"),
            Map.entry("hub", "hub reduction"),
            Map.entry("tires", "tire"),
            Map.entry("tyre", "tire"),
            Map.entry("tyres", "tire"),
            Map.entry("engines", "engine"),
            Map.entry("transmissions", "transmission"));

    /** Copies the list. */
    public Place {
        slots = List.copyOf(slots);
    }

    /**
     * Lists every place.
     *
     * @return both axles alike, then each slot
     */
    public static List<Place> all() {
        List<Place> all = new ArrayList<>();
        all.add(AXLES);
        for (Slot slot : Slot.values()) {
            all.add(new Place(slot.word(), List.of(slot)));
        }
        return all;
    }

    /**
     * Finds a place.
     *
     * @param word its word or a synonym, upper and lower case alike
     * @return the place, or empty
     */
    public static Optional<Place> ofWord(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        String known = SYNONYMS.getOrDefault(lower, lower);
        return all().stream().filter(place -> place.word.equals(known)).findFirst();
    }

    /**
     * Lists the words that are understood.
     *
     * @return the words of the places, then synonyms
     */
    public static List<String> words() {
        List<String> words = new ArrayList<>(all().stream().map(Place::word).toList());
        SYNONYMS.keySet().stream().sorted().forEach(words::add);
        return words;
    }

    /**
     * Returns the kind of part.
     *
     * @return the kind
     */
    public PartKind<?> kind() {
        return slots.get(0).kind();
    }

    /**
     * Puts a part there.
     *
     * @param specification the choices
     * @param text a catalog name or a literal
     * @return the changed choices; a tire goes on all wheels
     */
    public Specification put(Specification specification, String text) {
        Specification changed = specification;
        for (Slot slot : slots) {
            changed = changed.with(slot, text);
        }
        return slots.get(0) == Slot.TIRE ? changed.without(Slot.FRONT_TIRE) : changed;
    }
}
