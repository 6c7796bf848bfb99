package drivetrain.combination;

import drivetrain.refusal.Refusal;
import java.util.regex.Pattern;

/**
 * A part on the shelf, or one described by a literal.
 *
 * @param name the name by which it is chosen; for a literal the literal itself
 * @param description what it is, in the trade's words; may be empty
 * @param item the part
 * @param origin where it comes from: a catalog's file, or {@link #LITERAL}
 * @param <T> the type of the part
 */
public record Part<T>(String name, String description, T item, String origin) {

    /** The origin of a part that was typed instead of named. */
    public static final String LITERAL = "as typed";

    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9.-]{0,39}");

    /**
     * Makes a part of a catalog.
     *
     * @param name lower-case letters, digits, dots and hyphens, at most 40
     * @param description what it is
     * @param item the part
     * @param origin the catalog's file
     * @param <T> the type of the part
     * @return the part
     * @throws drivetrain.refusal.RefusedException if the name has other signs
     */
    public static <T> Part<T> of(String name, String description, T item, String origin) {
        if (!NAME.matcher(name).matches()) {
            throw Refusal.of("part name", name, "cannot be a part's name")
                    .allowing(
                            "lower-case letters, digits, \".\" and \"-\", at most 40, starting with a letter or digit")
                    .asException();
        }
        return new Part<>(name, description, item, origin);
    }

    /**
     * Makes a part from a literal.
     *
     * @param text the literal as typed
     * @param item the part
     * @param <T> the type of the part
     * @return the part
     */
    public static <T> Part<T> literal(String text, T item) {
        return new Part<>(text, "", item, LITERAL);
    }

    /**
     * Tells whether the part was typed instead of named.
     *
     * @return true for a literal
     */
    public boolean isLiteral() {
        return origin.equals(LITERAL);
    }
}
