package drivetrain.repl.session;

import drivetrain.combination.Specification;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is being worked on: the choices, the shelf on which their names are looked up, and the packages that were set aside.
 *
 * @param specification the choices as written
 * @param shelf the parts that a name can mean
 * @param aside the packages that were set aside, by name, in the order in which they were
 */
public record Setup(Specification specification, Shelf shelf, Map<String, Kept> aside) {

    /** Copies the map. */
    public Setup {
        aside = Collections.unmodifiableMap(new LinkedHashMap<>(aside));
    }

    /**
     * Makes a set-up with nothing set aside.
     *
     * @param specification the choices as written
     * @param shelf the parts that a name can mean
     */
    public Setup(Specification specification, Shelf shelf) {
        this(specification, shelf, Map.of());
    }

    /**
     * Changes the choices.
     *
     * @param changed the new choices
     * @return a copy with these choices on the same shelf
     */
    public Setup with(Specification changed) {
        return new Setup(changed, shelf, aside);
    }

    /**
     * Changes the shelf.
     *
     * @param other the new shelf
     * @return a copy with the same choices on that shelf
     */
    public Setup on(Shelf other) {
        return new Setup(specification, other, aside);
    }

    /**
     * Sets the choices aside under a name.
     *
     * @param name the name; a package of that name is replaced
     * @return a copy that remembers them
     */
    public Setup keeping(String name) {
        Map<String, Kept> more = new LinkedHashMap<>(aside);
        more.put(name, new Kept(specification, shelf));
        return new Setup(specification, shelf, more);
    }
}
