package drivetrain.finding;

import org.jspecify.annotations.Nullable;

/**
 * A warning that belongs to a result because acting on the result can hurt someone.
 *
 * @param hazard the hazard in a word or two, such as {@code tire}
 * @param text the warning, one or two sentences
 */
public record Caution(String hazard, String text) {
    /**
     * Compares all components. Written out, because the equality that a record comes with costs its first caller some 20 ms.
     *
     * @param other any object
     * @return true if all components are equal
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Caution that && hazard.equals(that.hazard) && text.equals(that.text);
    }

    /**
     * Returns a hash of all components.
     *
     * @return the hash
     */
    @Override
    public int hashCode() {
        return 31 * hazard.hashCode() + text.hashCode();
    }
}
