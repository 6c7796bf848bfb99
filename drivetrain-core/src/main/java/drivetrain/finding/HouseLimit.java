package drivetrain.finding;

/**
 * A limit that a shop can set for itself, as a plain number in the unit of its rule.
 *
 * @param value the number
 * @param source who set it
 */
public record HouseLimit(double value, Source source) {

    /**
     * Tells whether a shop has set it.
     *
     * @return false for a limit that comes with the library
     */
    public boolean isGiven() {
        return source.kind() == SourceClass.GIVEN;
    }
}
