package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Length;
import drivetrain.quantity.Quantity;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/** Reads a text that describes something in clauses separated by commas, each of words separated by spaces. */
final class Phrase {

    private static final int LONGEST_TEXT = 400;
    private static final Pattern NUMBER_START = Pattern.compile("[+-]?\\.?[0-9].*");
    private static final Pattern BARE_NUMBER = Pattern.compile("[+-]?[0-9.]+(?:[eE][+-]?[0-9]+)?");
    /** A number as a tape or a calculator shows it, at the start of a quantity. */
    private static final Pattern NUMBER = Pattern.compile("^[+-]?[0-9./ \\t-]*(?:[eE][+-]?[0-9]+)?");

    private static final Pattern FRACTION = Pattern.compile("[0-9]+/[0-9]+");

    private final String subject;
    private final String text;
    private final String allowed;
    private final List<String> keywords;
    private final List<List<Word>> clauses = new ArrayList<>();
    private int clause;
    private int next;

    /** One word and the index at which it starts. */
    record Word(String text, int start) {
        int end() {
            return start + text.length();
        }

        String key() {
            return text.toLowerCase(Locale.ROOT);
        }
    }

    private Phrase(String subject, String text, String allowed, List<String> keywords) {
        this.subject = subject;
        this.text = text;
        this.allowed = allowed;
        this.keywords = keywords;
    }

    /** Splits a text into clauses and words; the keywords are those that the part understands. */
    static Phrase of(String subject, String text, String allowed, List<String> keywords) {
        Phrase phrase = new Phrase(subject, text, allowed, keywords);
        if (text.length() > LONGEST_TEXT) {
            throw phrase.fault("is too long; " + LONGEST_TEXT + " characters are read", LONGEST_TEXT);
        }
        if (text.isBlank()) {
            throw phrase.fault("is empty", 0);
        }
        phrase.split();
        return phrase;
    }

    private void split() {
        List<Word> words = new ArrayList<>();
        int i = 0;
        while (i < text.length()) {
            char c = text.charAt(i);
            if (c == ',') {
                requireSeparating(i, words);
                clauses.add(words);
                words = new ArrayList<>();
                i++;
            } else if (Character.isWhitespace(c)) {
                i++;
            } else {
                int end = i;
                while (end < text.length() && !Character.isWhitespace(text.charAt(end)) && text.charAt(end) != ',') {
                    end++;
                }
                words.add(new Word(text.substring(i, end), i));
                i = end;
            }
        }
        if (words.isEmpty()) {
            throw fault("ends with a comma", text.length());
        }
        clauses.add(words);
    }

    private void requireSeparating(int at, List<Word> before) {
        if (before.isEmpty()) {
            throw fault("has a comma that separates nothing", at);
        }
        boolean insideNumber = at + 1 < text.length()
                && Character.isDigit(text.charAt(at - 1))
                && Character.isDigit(text.charAt(at + 1));
        if (insideNumber) {
            throw fault("has a comma inside a number; write the decimals after a point", at);
        }
    }

    /** Tells whether the present clause has a word left. */
    boolean hasNext() {
        return next < clauses.get(clause).size();
    }

    /** Goes on to the next clause, refusing what is left over of this one; false if there is none. */
    boolean nextClause() {
        requireClauseEnd();
        if (clause + 1 == clauses.size()) {
            return false;
        }
        clause++;
        next = 0;
        return true;
    }

    /** Refuses a word that is left over in the present clause. */
    void requireClauseEnd() {
        if (hasNext()) {
            throw notUnderstood();
        }
    }

    /** Returns where the next word of the clause starts, or where the clause ends. */
    int position() {
        List<Word> words = clauses.get(clause);
        return hasNext() ? words.get(next).start() : words.get(words.size() - 1).end();
    }

    /** What is refused for itself, as a part that was read, is refused at the place where its clause starts. */
    RefusedException placed(RefusedException refused, int start) {
        Refusal why = refused.refusal();
        if (why.subject().equals(subject) && why.position().isPresent()) {
            return refused;
        }
        return Refusal.of(subject, text, why.subject() + " " + why.problem())
                .allowing(why.allowed())
                .at(start)
                .asException();
    }

    /** Takes the words up to a keyword, or to the end of the clause, and reads them; a refusal is placed in the whole text. */
    <T> T until(String keyword, String wanted, Function<String, T> reader) {
        int start = position();
        int end = take(wanted).end();
        while (hasNext() && !clauses.get(clause).get(next).key().equals(keyword)) {
            end = take(wanted).end();
        }
        return located(start, text.substring(start, end), reader);
    }

    /** Takes the next word of the clause, which must have one. */
    Word take(String wanted) {
        if (!hasNext()) {
            throw fault("ends where " + wanted + " is wanted", position());
        }
        return clauses.get(clause).get(next++);
    }

    /** Takes the words if they come next. */
    boolean takes(String... words) {
        List<Word> all = clauses.get(clause);
        for (int i = 0; i < words.length; i++) {
            if (next + i >= all.size() || !all.get(next + i).key().equals(words[i])) {
                return false;
            }
        }
        next += words.length;
        return true;
    }

    /** Tells whether the word comes next. */
    boolean isAt(String word) {
        return hasNext() && clauses.get(clause).get(next).key().equals(word);
    }

    /** Takes the words, which must come next. */
    void require(String... words) {
        if (!takes(words)) {
            throw hasNext()
                    ? notUnderstood()
                    : fault("ends where \"" + String.join(" ", words) + "\" is wanted", position());
        }
    }

    /** Tells whether the next word starts like a number. */
    boolean atNumber() {
        return hasNext()
                && NUMBER_START.matcher(clauses.get(clause).get(next).text()).matches();
    }

    /** Tells whether the next quantity is a length; a number without a unit is none. */
    boolean atLength() {
        return atNumber() && Length.KIND.unit(nextUnit()).isPresent();
    }

    /** Tells whether the next quantity is an angle; a number without a unit is none. */
    boolean atAngle() {
        return atNumber() && Angle.KIND.unit(nextUnit()).isPresent();
    }

    private String nextUnit() {
        String quantity = text.substring(position(), quantityEnd(next));
        return NUMBER.matcher(quantity).replaceFirst("").strip();
    }

    /** Takes a number with its unit if the keyword stands behind it, and the keyword too. */
    <Q extends Quantity<Q>> Optional<Q> quantityBefore(String keyword, Kind<Q> kind) {
        if (!atNumber()) {
            return Optional.empty();
        }
        int end = quantityEnd(next);
        List<Word> words = clauses.get(clause);
        int behind = next;
        while (behind < words.size() && words.get(behind).start() < end) {
            behind++;
        }
        if (behind == words.size() || !words.get(behind).key().equals(keyword)) {
            return Optional.empty();
        }
        Q quantity = quantity(kind, "a number with its unit");
        next++;
        return Optional.of(quantity);
    }

    /** Takes a number with its unit. */
    <Q extends Quantity<Q>> Q quantity(Kind<Q> kind, String wanted) {
        return quantity(kind, wanted, value -> value);
    }

    /** Takes a number with its unit and checks it, so that one which is refused is refused where it stands. */
    <Q extends Quantity<Q>> Q quantity(Kind<Q> kind, String wanted, UnaryOperator<Q> check) {
        if (!atNumber()) {
            Word word = take(wanted);
            throw fault("\"" + word.text() + "\" stands where " + wanted + " is wanted", word.start());
        }
        int start = position();
        int end = quantityEnd(next);
        while (hasNext() && position() < end) {
            next++;
        }
        return located(start, text.substring(start, end), typed -> check.apply(kind.parse(typed)));
    }

    /** Takes a whole number. */
    int whole(String wanted, int least, int most) {
        Word word = take(wanted);
        if (!word.text().matches("[0-9]{1,6}")) {
            throw fault("\"" + word.text() + "\" is not " + wanted, word.start());
        }
        int number = Integer.parseInt(word.text());
        if (number < least || number > most) {
            throw fault(
                    wanted + " \"" + word.text() + "\" is out of range; allowed: " + least + " to " + most,
                    word.start());
        }
        return number;
    }

    private int quantityEnd(int first) {
        List<Word> words = clauses.get(clause);
        int last = first;
        boolean bare = BARE_NUMBER.matcher(words.get(first).text()).matches();
        if (bare
                && last + 1 < words.size()
                && FRACTION.matcher(words.get(last + 1).text()).matches()) {
            last++;
        }
        boolean fraction = FRACTION.matcher(words.get(last).text()).matches();
        boolean unitFollows = last + 1 < words.size()
                && !keywords.contains(words.get(last + 1).key())
                && !NUMBER_START.matcher(words.get(last + 1).text()).matches();
        if ((bare || fraction) && unitFollows) {
            last++;
        }
        return words.get(last).end();
    }

    private <T> T located(int start, String piece, Function<String, T> reader) {
        try {
            return reader.apply(piece);
        } catch (RefusedException refused) {
            Refusal why = refused.refusal();
            Refusal placed = Refusal.of(subject, text, "\"" + piece + "\" " + why.problem())
                    .allowing(why.allowed())
                    .suggesting(why.suggestions());
            throw placed.at(Math.min(text.length(), start + why.position().orElse(0)))
                    .asException();
        }
    }

    /** The refusal of the next word, with the keywords that are near it. */
    RefusedException notUnderstood() {
        Word word = take("a word");
        return Refusal.of(subject, text, "\"" + word.text() + "\" is not understood here")
                .allowing(allowed)
                .at(word.start())
                .suggesting(NearNames.of(word.text(), keywords))
                .asException();
    }

    /** A refusal with its place in the text. */
    RefusedException fault(String problem, int position) {
        return Refusal.of(subject, text, problem).allowing(allowed).at(position).asException();
    }
}
