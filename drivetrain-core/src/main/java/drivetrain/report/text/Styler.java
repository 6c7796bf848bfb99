package drivetrain.report.text;

/** Puts the marks of a screen around a piece of text. It must not change how wide the text is shown. */
@FunctionalInterface
public interface Styler {

    /** Leaves every text as it is. */
    Styler NONE = (style, text) -> text;

    /**
     * Marks a piece of text.
     *
     * @param style what the text means
     * @param text a part of one line, without control characters
     * @return the text as the screen wants it
     */
    String apply(Style style, String text);
}
