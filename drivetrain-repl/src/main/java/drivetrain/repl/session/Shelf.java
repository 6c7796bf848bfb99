package drivetrain.repl.session;

import drivetrain.combination.Catalog;
import drivetrain.combination.PartKind;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.refusal.RefusedException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A catalog that is read when a name first needs it.
 *
 * <p>Choices that are all literals need no catalog. A lazy shelf therefore must not name a part by text that is also a literal of its
 * kind; the shelf that comes with the program is held to that by a test, and a catalog of the user's is never lazy.
 */
public final class Shelf {

    private final String name;
    private final boolean lazy;
    private final Supplier<Catalog> reader;
    private volatile Optional<Catalog> read;

    private Shelf(String name, boolean lazy, Supplier<Catalog> reader, Optional<Catalog> read) {
        this.name = name;
        this.lazy = lazy;
        this.reader = reader;
        this.read = read;
    }

    /**
     * Makes a shelf that is read on first use.
     *
     * @param name the name by which the user knows it
     * @param reader what reads the catalog
     * @return the shelf
     */
    public static Shelf lazy(String name, Supplier<Catalog> reader) {
        return new Shelf(name, true, reader, Optional.empty());
    }

    /**
     * Makes a shelf of a catalog that has been read.
     *
     * @param name the name by which the user knows it
     * @param catalog the catalog
     * @return the shelf
     */
    public static Shelf of(String name, Catalog catalog) {
        return new Shelf(name, false, () -> catalog, Optional.of(catalog));
    }

    /**
     * Returns the name by which the user knows it.
     *
     * @return the file, or what the program calls its own
     */
    public String name() {
        return name;
    }

    /**
     * Returns the catalog, reading it if need be.
     *
     * @return the catalog
     * @throws RefusedException if it cannot be read
     */
    public Catalog catalog() {
        Optional<Catalog> known = read;
        if (known.isEmpty()) {
            known = Optional.of(reader.get());
            read = known;
        }
        return known.get();
    }

    /**
     * Returns a catalog in which the choices can be looked up, reading one only if a choice is not a literal.
     *
     * @param specification the choices
     * @return the catalog, or an empty one if every choice is a literal and this shelf has not been read
     */
    public Catalog catalogFor(Specification specification) {
        if (lazy
                && read.isEmpty()
                && specification.choices().entrySet().stream().allMatch(Shelf::isLiteral)) {
            return Catalog.empty();
        }
        return catalog();
    }

    private static boolean isLiteral(Map.Entry<Slot, String> choice) {
        PartKind<?> kind = choice.getKey().kind();
        try {
            kind.parse(choice.getValue());
            return true;
        } catch (RefusedException notALiteral) {
            return false;
        }
    }
}
