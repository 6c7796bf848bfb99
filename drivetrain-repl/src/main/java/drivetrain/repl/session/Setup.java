package drivetrain.repl.session;

import drivetrain.combination.Specification;

/**
 * What is being worked on: the choices, and the shelf on which their names are looked up.
 *
 * @param specification the choices as written
 * @param shelf the parts that a name can mean
 */
public record Setup(Specification specification, Shelf shelf) {

    /**
     * Changes the choices.
     *
     * @param changed the new choices
     * @return a copy with these choices on the same shelf
     */
    public Setup with(Specification changed) {
        return new Setup(changed, shelf);
    }
}
