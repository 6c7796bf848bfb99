package drivetrain.gearing;

import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Magnitude;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a part that is written out: words separated by spaces, or by a comma and a space, each with its place in the text. */
final class Literal {

    private static final int LONGEST_TEXT = 200;
    private static final Pattern NUMBER = Pattern.compile("([0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(%?)");

    private final String subject;
    private final String given;
    private final String allowed;
    private final List<String> keywords;
    private final List<Word> words = new ArrayList<>();
    private int next;

    /** One word and the index at which it starts. */
    record Word(String text, int start) {
        boolean is(String keyword) {
            return text.toLowerCase(Locale.ROOT).equals(keyword);
        }
    }

    private Literal(String subject, String given, String allowed, List<String> keywords) {
        this.subject = subject;
        this.given = given;
        this.allowed = allowed;
        this.keywords = keywords;
    }

    /** Splits a text into words; the keywords are those that the part understands, for suggestions. */
    static Literal of(String subject, String text, String allowed, List<String> keywords) {
        if (text.length() > LONGEST_TEXT) {
            throw Refusal.of(subject, text.substring(0, LONGEST_TEXT) + "...", "is too long")
                    .allowing(allowed)
                    .asException();
        }
        Literal literal = new Literal(subject, text, allowed, keywords);
        literal.split();
        return literal;
    }

    private void split() {
        int i = 0;
        while (i < given.length()) {
            char c = given.charAt(i);
            if (Character.isWhitespace(c)) {
                i++;
            } else if (c == ',') {
                i = comma(i);
            } else {
                int end = i;
                while (end < given.length() && !Character.isWhitespace(given.charAt(end)) && given.charAt(end) != ',') {
                    end++;
                }
                words.add(new Word(given.substring(i, end), i));
                i = end;
            }
        }
    }

    /** A comma separates only between a word and a space; between digits it was meant as a decimal point. */
    private int comma(int at) {
        boolean behindWord = at > 0 && !Character.isWhitespace(given.charAt(at - 1)) && given.charAt(at - 1) != ',';
        boolean beforeSpace = at + 1 < given.length() && Character.isWhitespace(given.charAt(at + 1));
        if (behindWord && beforeSpace && !given.substring(at + 1).isBlank()) {
            return at + 1;
        }
        if (behindWord && at + 1 < given.length() && Character.isDigit(given.charAt(at + 1))) {
            throw refusal(
                    "has a comma inside a number; write the decimals after a point and a space between numbers", at);
        }
        throw refusal("has a comma that separates nothing", at);
    }

    boolean hasNext() {
        return next < words.size();
    }

    /** Takes the next word; the text must have one. */
    Word take(String wanted) {
        if (!hasNext()) {
            throw refusal(given.isBlank() ? "is empty" : "ends where " + wanted + " is wanted", given.length());
        }
        return words.get(next++);
    }

    /** Takes the next word if it is the keyword. */
    boolean takes(String keyword) {
        if (hasNext() && words.get(next).is(keyword)) {
            next++;
            return true;
        }
        return false;
    }

    /** Tells whether the next word starts like a number. */
    boolean atNumber() {
        if (!hasNext()) {
            return false;
        }
        char first = words.get(next).text().charAt(0);
        return (first >= '0' && first <= '9') || first == '.' || first == '-' || first == '+';
    }

    /** Returns where the next word starts, or the end of the text. */
    int position() {
        return hasNext() ? words.get(next).start() : given.length();
    }

    /** Takes a plain number. */
    double number(String wanted) {
        Word word = take(wanted);
        Matcher matcher = NUMBER.matcher(word.text());
        if (!matcher.matches() || !matcher.group(2).isEmpty()) {
            throw refusal("\"" + word.text() + "\" is not " + wanted, word.start());
        }
        return Double.parseDouble(matcher.group(1));
    }

    /** Takes a fraction of one, or a percentage with its sign; gives the fraction. */
    double fraction(String wanted) {
        Word word = take(wanted);
        Matcher matcher = NUMBER.matcher(word.text());
        if (!matcher.matches()) {
            throw refusal("\"" + word.text() + "\" is not " + wanted, word.start());
        }
        double number = Double.parseDouble(matcher.group(1));
        boolean percent = !matcher.group(2).isEmpty() || takes("%");
        if (!percent && number > 1.0) {
            throw refusal(
                    "\"" + word.text() + "\" is neither a fraction of one nor has it a percent sign", word.start());
        }
        return percent ? number / 100.0 : number;
    }

    /** Takes a quantity above zero: a number with its unit in the same word or the next one. */
    <Q extends Magnitude<Q>> Q quantity(Kind<Q> kind, String wanted) {
        Word word = take(wanted);
        boolean bare = DecimalText.parse(word.text()).isPresent();
        if (bare && !hasNext()) {
            throw refusal("\"" + word.text() + "\" has no unit; " + wanted + " is wanted", given.length());
        }
        String text = bare ? word.text() + " " + words.get(next++).text() : word.text();
        try {
            return kind.parse(text).requirePositive(wanted);
        } catch (RefusedException refused) {
            throw refusal(refused.refusal().problem() + "; " + wanted + " is wanted", word.start());
        }
    }

    /** Tells whether the next word starts like a number and has the sign in it. */
    boolean atNumberWith(char sign) {
        return atNumber() && words.get(next).text().indexOf(sign) >= 0;
    }

    /** Refuses any word that is left over. */
    void requireEnd() {
        if (hasNext()) {
            throw notUnderstood();
        }
    }

    /** The refusal of the next word, with the keywords that are near it. */
    RefusedException notUnderstood() {
        Word word = take("a word");
        return Refusal.of(subject, given, "\"" + word.text() + "\" is not understood here")
                .allowing(allowed)
                .at(word.start())
                .suggesting(NearNames.of(word.text(), keywords))
                .asException();
    }

    RefusedException refusal(String problem, int position) {
        return Refusal.of(subject, given, problem)
                .allowing(allowed)
                .at(position)
                .asException();
    }

    RefusedException outOfRange(Word word, String what, String range) {
        return Refusal.of(subject, given, what + " \"" + word.text() + "\" is out of range")
                .allowing(range)
                .at(word.start())
                .asException();
    }
}
