package drivetrain.repl.session;

import drivetrain.combination.Combination;
import drivetrain.combination.Specification;

/**
 * A package that was set aside to be compared with others.
 *
 * @param specification its choices
 * @param shelf the parts that a name in it means
 */
public record Kept(Specification specification, Shelf shelf) {

    /**
     * Looks its choices up.
     *
     * @return the package
     * @throws drivetrain.refusal.RefusedException if a choice is neither a name nor a literal
     */
    public Combination combination() {
        return Combination.of(specification, shelf.catalogFor(specification));
    }
}
