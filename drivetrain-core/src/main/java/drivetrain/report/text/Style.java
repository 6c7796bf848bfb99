package drivetrain.report.text;

/** What a piece of text means, for a screen that can show it. The meaning is always in the words as well. */
public enum Style {
    /** Ordinary text. */
    PLAIN,
    /** A title, or the head of a column. */
    HEADING,
    /** The sentence that answers the question. */
    ANSWER,
    /** The word for a verdict that is met. */
    VERDICT_GOOD,
    /** The word for a verdict that needs a look, for an uncertain assumption or for a caution. */
    VERDICT_MARGINAL,
    /** The word for an exceeded limit. */
    VERDICT_BAD,
    /** Lines of a table, units and sources: less important than what they accompany. */
    FAINT
}
