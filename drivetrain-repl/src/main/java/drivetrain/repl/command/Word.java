package drivetrain.repl.command;

/**
 * One word of a line.
 *
 * @param text the word without its quotes
 * @param start the index in the line of its first character, a quote included
 * @param end the index in the line behind its last character, a quote included
 * @param quoted true if it stood in quotes
 */
public record Word(String text, int start, int end, boolean quoted) {

    /**
     * Returns the index in the line of the first character of the text.
     *
     * @return the index, counted from 0
     */
    public int textStart() {
        return quoted ? start + 1 : start;
    }

    /**
     * Tells whether the word is one of some plain words, upper and lower case alike.
     *
     * @param candidates the words, in lower case
     * @return true if it is and does not stand in quotes
     */
    public boolean isAny(String... candidates) {
        if (quoted) {
            return false;
        }
        for (String candidate : candidates) {
            if (candidate.equalsIgnoreCase(text)) {
                return true;
            }
        }
        return false;
    }
}
