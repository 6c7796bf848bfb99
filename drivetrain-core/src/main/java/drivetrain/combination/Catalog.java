package drivetrain.combination;

import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The parts that a shop can name, by kind. Immutable.
 *
 * <p>A part may be promised by name and made when it is first looked up; from then on it is the same part.
 */
public final class Catalog {

    private static final Catalog EMPTY = new Builder("no catalog").build();

    private final String title;
    private final Map<PartKind<?>, Map<String, Supplier<? extends Part<?>>>> shelves;
    private final HouseLimits limits;

    private Catalog(
            String title, Map<PartKind<?>, Map<String, Supplier<? extends Part<?>>>> shelves, HouseLimits limits) {
        this.title = title;
        this.shelves = shelves;
        this.limits = limits;
    }

    /**
     * Returns a catalog without parts, with which only literals can be resolved.
     *
     * @return the empty catalog
     */
    public static Catalog empty() {
        return EMPTY;
    }

    /**
     * Starts a catalog.
     *
     * @param title the title
     * @return a builder without parts
     */
    public static Builder titled(String title) {
        return new Builder(title);
    }

    /**
     * Returns the title.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * Returns the limits that the shop sets for itself.
     *
     * @return the limits
     */
    public HouseLimits limits() {
        return limits;
    }

    /**
     * Finds a part by its exact name.
     *
     * @param kind the kind of part
     * @param name the name
     * @param <T> the type of the part
     * @return the part, or empty
     */
    public <T> Optional<Part<T>> find(PartKind<T> kind, String name) {
        return Optional.ofNullable(shelf(kind).get(name)).map(Catalog::taken);
    }

    /**
     * Lists the parts of a kind.
     *
     * @param kind the kind of part
     * @param <T> the type of the part
     * @return the parts in the order in which they were added
     */
    public <T> List<Part<T>> parts(PartKind<T> kind) {
        List<Part<T>> parts = new ArrayList<>();
        for (Supplier<? extends Part<?>> part : shelf(kind).values()) {
            parts.add(taken(part));
        }
        return parts;
    }

    @SuppressWarnings("unchecked") // Builder.add puts only a Part<T> on the shelf of a PartKind<T>
    private static <T> Part<T> taken(Supplier<? extends Part<?>> part) {
        return (Part<T>) part.get();
    }

    /**
     * Looks a choice up: first as a name, then as a literal.
     *
     * @param kind the kind of part
     * @param text the choice as written
     * @param <T> the type of the part
     * @return the part
     * @throws RefusedException if the text is neither a name on this shelf nor a literal
     */
    public <T> Part<T> resolve(PartKind<T> kind, String text) {
        Optional<Part<T>> named = find(kind, text);
        if (named.isPresent()) {
            return named.get();
        }
        try {
            return Part.literal(text, kind.parse(text, this));
        } catch (RefusedException refused) {
            throw neither(kind, text, refused);
        }
    }

    private RefusedException neither(PartKind<?> kind, String text, RefusedException refused) {
        List<String> near = NearNames.of(text, shelf(kind).keySet());
        boolean looksLikeName = !text.isEmpty() && Character.isLetter(text.charAt(0)) && text.indexOf(' ') < 0;
        boolean nothingRead = refused.refusal().position().orElse(0) == 0;
        if (near.isEmpty() && !(looksLikeName && nothingRead)) {
            return refused;
        }
        return Refusal.of(kind.word(), text, "is not on the shelf and not a literal")
                .allowing("a name that \"parts " + kind.word() + "\" lists, or a literal such as " + kind.example())
                .suggesting(near)
                .asException();
    }

    private Map<String, Supplier<? extends Part<?>>> shelf(PartKind<?> kind) {
        return shelves.getOrDefault(kind, Map.of());
    }

    /** Collects parts for a catalog. */
    public static final class Builder {

        private final String title;
        private final Map<PartKind<?>, Map<String, Supplier<? extends Part<?>>>> shelves = new HashMap<>();
        private Optional<HouseLimits> limits = Optional.empty();

        private Builder(String title) {
            this.title = title;
        }

        /**
         * Adds a part.
         *
         * @param kind its kind
         * @param part the part
         * @param <T> the type of the part
         * @return this builder
         * @throws RefusedException if the kind has a part of that name already; the origin of that one is named
         */
        public <T> Builder add(PartKind<T> kind, Part<T> part) {
            return put(kind, part.name(), () -> part);
        }

        /**
         * Promises a part, which is made when it is first looked up.
         *
         * @param kind its kind
         * @param name its name
         * @param maker makes the part of that name; it is asked once, and again only if it failed
         * @param <T> the type of the part
         * @return this builder
         * @throws RefusedException if the kind has a part of that name already; the origin of that one is named
         */
        public <T> Builder promise(PartKind<T> kind, String name, Supplier<Part<T>> maker) {
            return put(kind, name, new Once<>(maker));
        }

        private Builder put(PartKind<?> kind, String name, Supplier<? extends Part<?>> part) {
            Map<String, Supplier<? extends Part<?>>> shelf =
                    shelves.computeIfAbsent(kind, none -> new LinkedHashMap<>());
            Supplier<? extends Part<?>> before = shelf.putIfAbsent(name, part);
            if (before != null) {
                String origin = before.get().origin();
                throw Refusal.of(kind.word(), name, "is on the shelf already, from " + origin)
                        .allowing("one part of a name in each kind")
                        .asException();
            }
            return this;
        }

        /**
         * Adds every part of another catalog.
         *
         * @param other the other catalog
         * @return this builder
         * @throws RefusedException if a name is taken
         */
        public Builder addAll(Catalog other) {
            for (PartKind<?> kind : PartKind.all()) {
                addAll(kind, other);
            }
            return this;
        }

        private <T> void addAll(PartKind<T> kind, Catalog other) {
            Collection<Part<T>> parts = other.parts(kind);
            for (Part<T> part : parts) {
                add(kind, part);
            }
        }

        /**
         * Sets the shop's own limits.
         *
         * @param own the limits
         * @return this builder
         */
        public Builder limits(HouseLimits own) {
            limits = Optional.of(own);
            return this;
        }

        /**
         * Ends the catalog.
         *
         * @return the catalog
         * @throws RefusedException if two limits of the shop contradict each other
         */
        public Catalog build() {
            HouseLimits house = limits.orElseGet(HouseLimits::packed);
            house.own().keySet().forEach(house::inOrder);
            Map<PartKind<?>, Map<String, Supplier<? extends Part<?>>>> copy = new HashMap<>();
            shelves.forEach((kind, shelf) -> copy.put(kind, new LinkedHashMap<>(shelf)));
            return new Catalog(title, copy, house);
        }
    }
}
