package drivetrain.report.text;

/**
 * How many columns of a screen a text takes.
 *
 * <p>Two for the wide and full-width signs of East Asian scripts and for pictographs, none for combining marks, one for all else. The blocks
 * are those of Unicode Standard Annex 11, taken whole, so that a few narrow signs among them count two. Not covered: signs whose width a
 * screen chooses (taken as one), and signs that a screen joins into one, such as flags (counted one by one, so that a line comes out shorter
 * than counted, never longer).
 */
final class DisplayWidth {

    /** First and last code point of each wide block, ascending. */
    private static final int[] WIDE = {
        0x1100, 0x115F, 0x231A, 0x231B, 0x2329, 0x232A, 0x23E9, 0x23F3, 0x25FD, 0x25FE, 0x2614, 0x2615, 0x2648, 0x2653,
        0x267F, 0x267F, 0x2693, 0x2693, 0x26A1, 0x26A1, 0x26AA, 0x26AB, 0x26BD, 0x26BE, 0x26C4, 0x26C5, 0x26CE, 0x26CE,
        0x26D4, 0x26D4, 0x26EA, 0x26EA, 0x26F2, 0x26F5, 0x26FA, 0x26FD, 0x2705, 0x2705, 0x270A, 0x270B, 0x2728, 0x2728,
        0x274C, 0x274E, 0x2753, 0x2757, 0x2795, 0x2797, 0x27B0, 0x27BF, 0x2B1B, 0x2B1C, 0x2B50, 0x2B55, 0x2E80, 0x303E,
        0x3041, 0xA4CF, 0xA960, 0xA97F, 0xAC00, 0xD7A3, 0xF900, 0xFAFF, 0xFE10, 0xFE1F, 0xFE30, 0xFE6F, 0xFF01, 0xFF60,
        0xFFE0, 0xFFE6, 0x16FE0, 0x18DFF, 0x1AFF0, 0x1B2FF, 0x1F004, 0x1F004, 0x1F0CF, 0x1F0CF, 0x1F18E, 0x1F18E,
        0x1F191, 0x1F19A, 0x1F200, 0x1F64F, 0x1F680, 0x1F6FF, 0x1F7E0, 0x1F7FF, 0x1F90C, 0x1FAFF, 0x20000, 0x3FFFD
    };

    private DisplayWidth() {}

    static int of(String text) {
        int columns = 0;
        for (int index = 0; index < text.length(); ) {
            int sign = text.codePointAt(index);
            columns += of(sign);
            index += Character.charCount(sign);
        }
        return columns;
    }

    static int of(int sign) {
        if (sign < 0x300) {
            return 1;
        }
        int type = Character.getType(sign);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        for (int block = 0; block < WIDE.length && WIDE[block] <= sign; block += 2) {
            if (sign <= WIDE[block + 1]) {
                return 2;
            }
        }
        return 1;
    }

    /** Returns how many chars of the text fit, combining marks kept with their base; at least one sign, however narrow the place. */
    static int fitting(String text, int columns) {
        int used = 0;
        int index = 0;
        while (index < text.length()) {
            int sign = text.codePointAt(index);
            used += of(sign);
            if (used > columns && index > 0) {
                return index;
            }
            index += Character.charCount(sign);
        }
        return index;
    }

    static String padEnd(String text, int columns) {
        return text + " ".repeat(Math.max(0, columns - of(text)));
    }

    static String padStart(String text, int columns) {
        return " ".repeat(Math.max(0, columns - of(text))) + text;
    }
}
