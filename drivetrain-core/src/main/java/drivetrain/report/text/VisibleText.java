package drivetrain.report.text;

/** Texts without anything that a screen would obey instead of show. */
final class VisibleText {

    private VisibleText() {}

    /**
     * Writes control characters, format characters (bidirectional controls, zero-width signs), line and paragraph separators, halves of
     * surrogate pairs and unassigned code points as {@code \}{@code uXXXX}, and every other space as a plain one.
     */
    static String of(String text) {
        if (text.chars().allMatch(sign -> sign >= ' ' && sign <= '~')) {
            return text;
        }
        StringBuilder visible = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(sign -> append(visible, sign));
        return visible.toString();
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

    /** Writes a code point as JSON does: four digits, or two groups of four for one beyond the basic plane. */
    static void escape(StringBuilder target, int sign) {
        for (char half : Character.toChars(sign)) {
            target.append("\\u");
            for (int shift = 12; shift >= 0; shift -= 4) {
                target.append(Character.toUpperCase(Character.forDigit(half >> shift & 0xF, 16)));
            }
        }
    }
}
