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

/** The parts that a shop can name, by kind. Immutable. */
public final class Catalog {

    private static final Catalog EMPTY = new Builder("no catalog").build();

    private final String title;
    private final Map<PartKind<?>, Map<String, Part<?>>> shelves;
    private final HouseLimits limits;

    private Catalog(String title, Map<PartKind<?>, Map<String, Part<?>>> shelves, HouseLimits limits) {
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
    @SuppressWarnings("unchecked") // Builder.add puts only a Part<T> on the shelf of a PartKind<T>
    public <T> Optional<Part<T>> find(PartKind<T> kind, String name) {
        return Optional.ofNullable((Part<T>) shelf(kind).get(name));
    }

    /**
     * Lists the parts of a kind.
     *
     * @param kind the kind of part
     * @param <T> the type of the part
     * @return the parts in the order in which they were added
     */
    @SuppressWarnings("unchecked") // as above
    public <T> List<Part<T>> parts(PartKind<T> kind) {
        List<Part<T>> parts = new ArrayList<>();
        for (Part<?> part : shelf(kind).values()) {
            parts.add((Part<T>) part);
        }
        return parts;
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
            return Part.literal(text, kind.parse(text));
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

    private Map<String, Part<?>> shelf(PartKind<?> kind) {
        return shelves.getOrDefault(kind, Map.of());
    }

    /** Collects parts for a catalog. */
    public static final class Builder {

        private final String title;
        private final Map<PartKind<?>, Map<String, Part<?>>> shelves = new HashMap<>();
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
            Map<String, Part<?>> shelf = shelves.computeIfAbsent(kind, none -> new LinkedHashMap<>());
            Part<?> before = shelf.putIfAbsent(part.name(), part);
            if (before != null) {
                throw Refusal.of(kind.word(), part.name(), "is on the shelf already, from " + before.origin())
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
         */
        public Catalog build() {
            Map<PartKind<?>, Map<String, Part<?>>> copy = new HashMap<>();
            shelves.forEach((kind, shelf) -> copy.put(kind, new LinkedHashMap<>(shelf)));
            return new Catalog(title, copy, limits.orElseGet(HouseLimits::packed));
        }
    }
}
