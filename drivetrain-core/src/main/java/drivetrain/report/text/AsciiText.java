package drivetrain.report.text;

import drivetrain.refusal.VisibleText;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Texts in the printable signs of ASCII, by names and spellings that a reader knows. */
final class AsciiText {

    private static final List<String> GREEK = List.of(
            "alpha", "beta", "gamma", "delta", "epsilon", "zeta", "eta", "theta", "iota", "kappa", "lambda", "mu", "nu",
            "xi", "omicron", "pi", "rho", "sigma", "sigma", "tau", "upsilon", "phi", "chi", "psi", "omega");

    private static final Map<Integer, String> SPELLINGS = spellings();

    private AsciiText() {}

    /** Replaces every sign outside ASCII: by its usual spelling, by its base letter, or by {@code \}{@code uXXXX}. */
    static String of(String text) {
        if (text.chars().allMatch(sign -> sign < 128)) {
            return text;
        }
        StringBuilder ascii = new StringBuilder(text.length() + 16);
        int index = 0;
        while (index < text.length()) {
            int sign = text.codePointAt(index);
            int next = index + Character.charCount(sign);
            if (sign == '\u00B7' || sign == '\u22C5') {
                ascii.append(dot(text, index));
            } else if (sign == '\u00B0') {
                ascii.append(index > 0 && isDigit(text.charAt(index - 1)) ? " deg" : "deg");
            } else {
                append(ascii, sign);
            }
            index = next;
        }
        return ascii.toString();
    }

    /** A raised dot is a product between spaces, nothing in N·m, and a hyphen in every other unit. */
    private static String dot(String text, int index) {
        boolean spaced = index > 0 && text.charAt(index - 1) == ' ';
        if (spaced) {
            return "*";
        }
        boolean newtonMeter = index > 0
                && text.charAt(index - 1) == 'N'
                && index + 1 < text.length()
                && text.charAt(index + 1) == 'm';
        return newtonMeter ? "" : "-";
    }

    private static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }

    private static void append(StringBuilder ascii, int sign) {
        if (sign < 128) {
            ascii.appendCodePoint(sign);
            return;
        }
        String spelling = SPELLINGS.get(sign);
        if (spelling != null) {
            ascii.append(spelling);
            return;
        }
        String base = Normalizer.normalize(Character.toString(sign), Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "");
        if (base.chars().allMatch(part -> part < 128)) {
            ascii.append(base);
        } else {
            VisibleText.escape(ascii, sign);
        }
    }

    private static Map<Integer, String> spellings() {
        Map<Integer, String> map = new HashMap<>();
        put(map, "\u2010\u2011\u2012\u2013\u2212", "-");
        put(map, "\u2014\u2015", "--");
        put(map, "\u2018\u2019\u2032\u02BC", "'");
        put(map, "\u201C\u201D\u2033\u00AB\u00BB", "\"");
        put(map, "\u2022\u2219", "*");
        put(map, "\u00D7", "x");
        put(map, "\u00F7\u2044\u2215", "/");
        put(map, "\u00B1", "+/-");
        put(map, "\u2264", "<=");
        put(map, "\u2265", ">=");
        put(map, "\u2260", "!=");
        put(map, "\u2248", "~");
        put(map, "\u221A", "sqrt");
        put(map, "\u221E", "inf");
        put(map, "\u2192", "->");
        put(map, "\u2190", "<-");
        put(map, "\u2026", "...");
        put(map, "\u00B9", "^1");
        put(map, "\u00B2", "^2");
        put(map, "\u00B3", "^3");
        put(map, "\u2074", "^4");
        put(map, "\u207B", "^-");
        put(map, "\u00BC", " 1/4");
        put(map, "\u00BD", " 1/2");
        put(map, "\u00BE", " 3/4");
        put(map, "\u00DF", "ss");
        put(map, "\u00C6", "AE");
        put(map, "\u00E6", "ae");
        put(map, "\u00D8", "O");
        put(map, "\u00F8", "o");
        put(map, "\u0141", "L");
        put(map, "\u0142", "l");
        put(map, "\u00B5", "u");
        for (int letter = 0; letter < GREEK.size(); letter++) {
            String name = GREEK.get(letter);
            map.put(0x3B1 + letter, name);
            map.put(0x391 + letter, Character.toUpperCase(name.charAt(0)) + name.substring(1));
        }
        return Map.copyOf(map);
    }

    private static void put(Map<Integer, String> map, String signs, String spelling) {
        signs.codePoints().forEach(sign -> map.put(sign, spelling));
    }
}
