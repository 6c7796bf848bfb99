package drivetrain.quantity;

import drivetrain.refusal.NearNames;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words by which one kind's units are read.
 *
 * <p>A word is looked up as written first. Then come the words that are refused because they can mean more than one unit, then the units
 * without regard to case, as far as no two of them are alike. So {@code MPa} is a megapascal, {@code KPA} a kilopascal, and {@code mPa},
 * which would be a millipascal, is none.
 *
 * @param <Q> the kind of quantity
 */
final class UnitWords<Q extends Quantity<Q>> {

    private static final Pattern BLANKS = Pattern.compile("[\\h\\v]+");
    private static final Pattern DOTS = Pattern.compile("[*\\u22C5\\u2022\\u2219]");

    private final Map<String, Unit<Q>> exact = new HashMap<>();
    private final Map<String, Optional<Unit<Q>>> folded = new HashMap<>();
    private final Map<String, String> refused;

    /** Collects the words of the units; {@code refused} maps each refused word to the words that are meant. */
    UnitWords(List<Unit<Q>> units, Map<String, String> refused) {
        this.refused = Map.copyOf(refused);
        for (Unit<Q> unit : units) {
            for (String word : wordsOf(unit)) {
                exact.merge(word, unit, UnitWords::onlyOne);
                folded.merge(fold(word), Optional.of(unit), (old, now) -> old.equals(now) ? old : Optional.empty());
            }
        }
    }

    private static <Q extends Quantity<Q>> Unit<Q> onlyOne(Unit<Q> first, Unit<Q> second) {
        if (first != second) {
            throw new IllegalStateException("one word for both " + first + " and " + second);
        }
        return first;
    }

    private static List<String> wordsOf(Unit<?> unit) {
        List<String> words = new ArrayList<>(unit.spellings());
        words.add(unit.symbol());
        words.add(unit.asciiSymbol());
        return words;
    }

    Optional<Unit<Q>> find(String text) {
        Unit<Q> plain = exact.get(text);
        if (plain != null) {
            return Optional.of(plain);
        }
        String word = tidy(text);
        Unit<Q> found = exact.get(word);
        if (found != null) {
            return Optional.of(found);
        }
        return refused.containsKey(word) ? Optional.empty() : folded.getOrDefault(fold(word), Optional.empty());
    }

    /** Returns what may be meant by a refused word; empty if the word is not one. */
    Optional<String> meantBy(String text) {
        String word = tidy(text);
        return Optional.ofNullable(refused.getOrDefault(word, refused.get(fold(word))));
    }

    List<String> near(String text) {
        return NearNames.of(tidy(text), exact.keySet());
    }

    /** Returns the index of the first character from an index on that is no blank. */
    static int skipBlanks(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        if (at == text.length() || (text.charAt(at) > ' ' && text.charAt(at) < 0x7F)) {
            return at;
        }
        Matcher blanks = BLANKS.matcher(text).region(from, text.length());
        return blanks.lookingAt() ? blanks.end() : from;
    }

    private static String tidy(String text) {
        String spaced = BLANKS.matcher(text.strip()).replaceAll(" ");
        String word = DOTS.matcher(spaced).replaceAll("\u00B7");
        return word.length() > 1 && word.endsWith(".") ? word.substring(0, word.length() - 1) : word;
    }

    private static String fold(String word) {
        return word.toLowerCase(Locale.ROOT);
    }
}
