package drivetrain.repl.command;

import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of the language, cut into words.
 *
 * <p>Words are separated by blanks. A word that starts with a quotation mark, single or double, ends at the next one of the same
 * kind and may hold blanks; inside a word a quotation mark is a plain character, so that {@code 31.7"} is a length. A word that
 * starts with {@code #} ends the line: the rest is a remark. There is no escape character and no continuation.
 *
 * @param text the line as typed
 * @param words the words in order
 */
public record Line(String text, List<Word> words) {

    /** The longest line that is read, in characters. */
    public static final int LONGEST = 4096;

    /** The source that a place has when it lies in a line whose origin only the caller knows. */
    public static final String SOURCE = "line";

    /** Copies the list. */
    public Line {
        words = List.copyOf(words);
    }

    /**
     * Cuts a line into words.
     *
     * @param text the line without its line end
     * @return the words
     * @throws drivetrain.refusal.RefusedException if the line is too long, holds a control character or leaves a quote open, with the
     *     column of the fault
     */
    public static Line parse(String text) {
        if (text.length() > LONGEST) {
            throw Refusal.of("line", text.substring(0, 40) + "...", "is too long")
                    .allowing("at most " + LONGEST + " characters")
                    .in(place(0))
                    .asException();
        }
        List<Word> words = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            char first = text.charAt(at);
            if (isBlank(first)) {
                at++;
            } else if (first == '#') {
                break;
            } else {
                Word word = isQuote(first) ? quoted(text, at) : plain(text, at);
                words.add(word);
                at = word.end();
            }
        }
        requirePrintable(text, at);
        return new Line(text, words);
    }

    /**
     * Returns the place of a character of the line.
     *
     * @param index the index of the character, counted from 0
     * @return the place, with {@link #SOURCE} for its source
     */
    public static Place place(int index) {
        return new Place(SOURCE, 1, index + 1);
    }

    private static Word plain(String text, int start) {
        int end = start;
        while (end < text.length() && !isBlank(text.charAt(end))) {
            end++;
        }
        return new Word(text.substring(start, end), start, end, false);
    }

    private static Word quoted(String text, int start) {
        int close = text.indexOf(text.charAt(start), start + 1);
        if (close < 0) {
            throw Refusal.of("line", text, "a quotation mark is opened and not closed")
                    .allowing("two of the same kind around a word, as in \"coast tourer\"")
                    .in(place(start))
                    .asException();
        }
        if (close + 1 < text.length() && !isBlank(text.charAt(close + 1))) {
            throw Refusal.of("line", text, "a word goes on behind its closing quotation mark")
                    .allowing("a blank there")
                    .in(place(close + 1))
                    .asException();
        }
        return new Word(text.substring(start + 1, close), start, close + 1, true);
    }

    private static void requirePrintable(String text, int end) {
        for (int i = 0; i < end; i++) {
            if (Character.isISOControl(text.charAt(i)) && text.charAt(i) != '\t') {
                throw Refusal.of("line", text, "a character that cannot be printed stands at column " + (i + 1))
                        .in(place(i))
                        .asException();
            }
        }
    }

    /**
     * Tells whether a character separates words.
     *
     * @param c the character
     * @return true for every kind of space and for the tab
     */
    public static boolean isBlank(char c) {
        return c == ' ' || c == '\t' || Character.isSpaceChar(c);
    }

    /**
     * Tells whether a character opens a word in quotes.
     *
     * @param c the character
     * @return true for the single and the double quotation mark
     */
    public static boolean isQuote(char c) {
        return c == '"' || c == '\'';
    }

    /**
     * Tells whether there is nothing to run.
     *
     * @return true if the line is blank or holds only a remark
     */
    public boolean isEmpty() {
        return words.isEmpty();
    }
}
