package drivetrain.document;

import java.util.Locale;
import java.util.OptionalInt;

/**
 * Characters that have no business in a document: they steer a terminal, turn the direction of writing, or cannot be seen at all.
 *
 * <p>Refused are the control characters of Unicode (categories Cc and Cs) except line breaks, the marks that embed or override a direction of writing
 * (U+202A to U+202E, U+2066 to U+2069), the line and paragraph separators, the byte order mark and the noncharacters. Tabs are left to the reader.
 */
final class Characters {

    private static final int LONGEST_EXCERPT = 40;

    private Characters() {}

    /** Returns the index of the first character that is refused. */
    static OptionalInt firstRefused(CharSequence text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c >= ' ' && c < 0x7F) || c == '\n' || c == '\r' || c == '\t') {
                continue;
            }
            boolean pair = Character.isHighSurrogate(c)
                    && i + 1 < text.length()
                    && Character.isLowSurrogate(text.charAt(i + 1));
            if (isRefused(pair ? Character.toCodePoint(c, text.charAt(i + 1)) : c)) {
                return OptionalInt.of(i);
            }
            if (pair) {
                i++;
            }
        }
        return OptionalInt.empty();
    }

    private static boolean isRefused(int c) {
        int category = Character.getType(c);
        return category == Character.CONTROL
                || category == Character.SURROGATE
                || category == Character.LINE_SEPARATOR
                || category == Character.PARAGRAPH_SEPARATOR
                || (c >= 0x202A && c <= 0x202E)
                || (c >= 0x2066 && c <= 0x2069)
                || c == 0xFEFF
                || (c >= 0xFDD0 && c <= 0xFDEF)
                || (c & 0xFFFE) == 0xFFFE;
    }

    /** Names the character at an index, such as {@code U+001B}, since it cannot be shown. */
    static String name(CharSequence text, int index) {
        return String.format(Locale.ROOT, "U+%04X", Character.codePointAt(text, index));
    }

    /** Returns a text as a refusal may quote it: one line, clipped with a mark, refused characters and quotation marks replaced. */
    static String excerpt(CharSequence text) {
        String head =
                text.subSequence(0, Math.min(text.length(), LONGEST_EXCERPT)).toString();
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < head.length(); i++) {
            String one = head.substring(i, i + 1);
            boolean shown = firstRefused(one).isEmpty() || Character.isSurrogate(one.charAt(0));
            line.append(one.isBlank() ? " " : shown ? one : "?");
        }
        if (line.length() > 0 && Character.isHighSurrogate(line.charAt(line.length() - 1))) {
            line.setLength(line.length() - 1);
        }
        return text.length() > LONGEST_EXCERPT ? line + "..." : line.toString();
    }
}
