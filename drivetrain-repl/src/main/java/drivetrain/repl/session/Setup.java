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
     * Sets packages of the same shelf aside.
     *
     * @param packages their choices by name; a package of such a name is replaced
     * @return a copy that remembers them
     */
    public Setup keeping(Map<String, Specification> packages) {
        Map<String, Kept> more = new LinkedHashMap<>(aside);
        packages.forEach((name, choices) -> more.put(name, new Kept(choices, shelf)));
        return new Setup(specification, shelf, more);
    }

    /**
     * Returns the choices of the packages that were set aside.
     *
     * @return the choices by name
     */
    public Map<String, Specification> asideChoices() {
        Map<String, Specification> choices = new LinkedHashMap<>();
        aside.forEach((name, kept) -> choices.put(name, kept.specification()));
        return choices;
    }

    /**
     * Tells whether a file of both would be the same, whichever shelf the names are looked up on.
     *
     * @param other another set-up
     * @return true if the choices and the packages that were set aside are alike
     */
    public boolean isWrittenLike(Setup other) {
        return specification.equals(other.specification) && asideChoices().equals(other.asideChoices());
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
