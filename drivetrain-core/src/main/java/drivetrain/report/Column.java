package drivetrain.report;

/**
 * A column of a table. Its unit is not named here: it is the unit of its figures in the unit system that is shown.
 *
 * @param key the machine name, such as {@code roadSpeed}
 * @param heading the words at its head, such as {@code road speed}
 * @param alignment on which side its cells stand
 */
public record Column(String key, String heading, Alignment alignment) {

    /**
     * Checks the key and the heading.
     *
     * @throws IllegalArgumentException if the key is no machine name or the heading is blank
     */
    public Column {
        MachineName.require(key);
        if (heading.isBlank()) {
            throw new IllegalArgumentException("column " + key + " needs a heading");
        }
    }

    /**
     * Makes a column of text.
     *
     * @param key the machine name
     * @param heading the words at its head
     * @return the column
     */
    public static Column ofText(String key, String heading) {
        return new Column(key, heading, Alignment.START);
    }

    /**
     * Makes a column of figures.
     *
     * @param key the machine name
     * @param heading the words at its head
     * @return the column
     */
    public static Column ofFigures(String key, String heading) {
        return new Column(key, heading, Alignment.END);
    }
}
