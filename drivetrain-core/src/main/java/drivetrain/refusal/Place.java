package drivetrain.refusal;

/**
 * A place in a text that came from outside: a file, a script, a resource.
 *
 * @param source the file or resource name as the user knows it
 * @param line the line, counted from 1; 0 where only the source is known
 * @param column the column, counted from 1; 0 where only the line is known
 */
public record Place(String source, int line, int column) {

    /**
     * Checks the counts.
     *
     * @throws IllegalArgumentException if a count is negative
     */
    public Place {
        if (line < 0 || column < 0) {
            throw new IllegalArgumentException("line and column count from 1; given " + line + " and " + column);
        }
    }

    /**
     * Returns {@code source:line:column}, leaving out what is not known.
     *
     * @return the place as compilers and editors write it
     */
    @Override
    public String toString() {
        if (line == 0) {
            return source;
        }
        return column == 0 ? source + ":" + line : source + ":" + line + ":" + column;
    }
}
