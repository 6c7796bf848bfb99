package drivetrain.report;

/** On which side the cells of a column stand. */
public enum Alignment {
    /** On the left, as text. */
    START,
    /** On the right, as figures whose decimal points stand below each other. */
    END
}
