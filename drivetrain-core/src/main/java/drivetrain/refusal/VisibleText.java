package drivetrain.refusal;

/**
 * Foreign text made safe to show: what would act on a terminal instead of being seen is written as an escape.
 *
 * <p>Escaped as a backslash, {@code u} and four hexadecimal digits are control characters (line ends and tabs among them), invisible
 * format characters such as the ones that turn the direction of writing, separators of lines and paragraphs, and halves of a broken
 * surrogate pair. Everything else stays as it is.
 */
public final class VisibleText {

    private VisibleText() {}

    /**
     * Makes a text safe to show.
     *
     * @param text any text
     * @return the text itself if all of it can be seen, else a copy with escapes
     */
    public static String of(String text) {
        if (text.codePoints().allMatch(VisibleText::isVisible)) {
            return text;
        }
        StringBuilder visible = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(point -> append(visible, point));
        return visible.toString();
    }

    private static void append(StringBuilder visible, int point) {
        if (isVisible(point)) {
            visible.appendCodePoint(point);
            return;
        }
        for (char unit : Character.toChars(point)) {
            visible.append(String.format("\\u%04X", (int) unit));
        }
    }

    private static boolean isVisible(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
