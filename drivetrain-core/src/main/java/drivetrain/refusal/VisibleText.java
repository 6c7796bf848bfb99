package drivetrain.refusal;

/**
 * Foreign text made safe to show: what would act on a screen instead of being seen is written as an escape.
 *
 * <p>Escaped as a backslash, {@code u} and four hexadecimal digits are control characters (line ends and tabs among them), invisible
 * format characters such as the ones that turn the direction of writing, separators of lines and paragraphs, halves of a broken
 * surrogate pair and unassigned code points. Every other space is a plain one. Everything else stays as it is.
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
        if (isPlain(text)) {
            return text;
        }
        StringBuilder visible = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(sign -> append(visible, sign));
        return text.contentEquals(visible) ? text : visible.toString();
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < ' ' || text.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }

    private static void append(StringBuilder visible, int sign) {
        switch (Character.getType(sign)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.UNASSIGNED -> escape(visible, sign);
            case Character.SPACE_SEPARATOR -> visible.append(' ');
            default -> visible.appendCodePoint(sign);
        }
    }

    /**
     * Writes a code point as JSON does: four digits, or two groups of four for one beyond the basic plane.
     *
     * @param target where the escape is added
     * @param sign the code point
     */
    public static void escape(StringBuilder target, int sign) {
        for (char half : Character.toChars(sign)) {
            target.append("\\u");
            for (int shift = 12; shift >= 0; shift -= 4) {
                target.append(Character.toUpperCase(Character.forDigit(half >> shift & 0xF, 16)));
            }
        }
    }
}
