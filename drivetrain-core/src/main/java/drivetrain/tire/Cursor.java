package drivetrain.tire;

import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.OptionalInt;

/** A place in a text as typed. Reads without regard to case and spaces, and knows the index of every fault. */
final class Cursor {

    private static final char MULTIPLICATION_SIGN = '\u00D7';
    private static final char END = '\0';

    private final String subject;
    private final String text;
    private int index;
    private int whole;

    Cursor(String subject, String text) {
        this.subject = subject;
        this.text = text;
    }

    int index() {
        return index;
    }

    /** Notes that the text up to here can stand by itself. */
    void markWhole() {
        whole = index;
    }

    /** The part of the text that can stand by itself; empty where there is none yet. */
    String whole() {
        return text.substring(0, whole);
    }

    /** The index of the next sign that is not a space. */
    int next() {
        int at = index;
        while (at < text.length() && isSpace(text.charAt(at))) {
            at++;
        }
        return at;
    }

    boolean atEnd() {
        return next() == text.length();
    }

    /** The next sign in upper case, a multiplication sign as X; NUL at the end. */
    char peek() {
        return sign(next());
    }

    /** The next sign if it follows without a space. */
    char peekAttached() {
        return sign(index);
    }

    private char sign(int at) {
        if (at >= text.length()) {
            return END;
        }
        char typed = text.charAt(at);
        return typed == MULTIPLICATION_SIGN ? 'X' : Character.toUpperCase(typed);
    }

    boolean accept(char wanted) {
        if (peek() != wanted) {
            return false;
        }
        index = next() + 1;
        return true;
    }

    /** Takes the word if it comes next; a space within the word stands for any number of spaces, or none. */
    boolean accept(String word) {
        int at = next();
        for (int i = 0; i < word.length(); i++) {
            if (word.charAt(i) == ' ') {
                while (isSpace(sign(at))) {
                    at++;
                }
            } else if (sign(at) == word.charAt(i)) {
                at++;
            } else {
                return false;
            }
        }
        index = at;
        return true;
    }

    /** Takes the word if it comes next and no letter follows it. */
    boolean acceptWhole(String word) {
        int before = index;
        if (accept(word) && !Character.isLetter(peekAttached())) {
            return true;
        }
        index = before;
        return false;
    }

    boolean atDigit() {
        return isDigit(peek());
    }

    /** Takes a number: digits, perhaps a point and more digits. */
    Numeral number(String wanted, String allowed) {
        int start = next();
        int end = digits(start);
        if (end == start) {
            throw unexpected(wanted, allowed);
        }
        if (sign(end) == '.') {
            int decimals = digits(end + 1);
            if (decimals == end + 1) {
                throw fault(decimals, "needs a digit after the point", allowed);
            }
            end = decimals;
        }
        if (sign(end) == ',' && isDigit(sign(end + 1))) {
            throw fault(end, "has a comma; write the decimals after a point", allowed);
        }
        index = end;
        return new Numeral(text.substring(start, end), start);
    }

    private int digits(int from) {
        int at = from;
        while (isDigit(sign(at))) {
            at++;
        }
        return at;
    }

    /** Refuses the sign at an index. */
    RefusedException fault(int at, String problem, String allowed) {
        return Refusal.of(subject, text, problem).allowing(allowed).at(at).asException();
    }

    /** Refuses what comes next, named as typed. */
    RefusedException unexpected(String wanted, String allowed) {
        return unexpectedAt(next(), wanted, allowed);
    }

    /** Refuses the sign at an index, named as typed. */
    RefusedException unexpectedAt(int at, String wanted, String allowed) {
        if (at == text.length()) {
            return fault(at, "ends where " + wanted + " is needed", allowed);
        }
        return fault(at, "has \"" + text.charAt(at) + "\" where " + wanted + " is needed", allowed);
    }

    /** Tells whether a digit follows without a space. */
    boolean digitAttached() {
        return isDigit(peekAttached());
    }

    private static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }

    private static boolean isSpace(char sign) {
        return Character.isWhitespace(sign) || Character.isSpaceChar(sign);
    }

    /**
     * A number as typed.
     *
     * @param text its digits
     * @param start the index of the first one
     */
    record Numeral(String text, int start) {

        private static final int MOST_DIGITS = 9;

        double value() {
            return Double.parseDouble(text);
        }

        boolean isWhole() {
            return text.indexOf('.') < 0;
        }

        /** The number if it is whole and not longer than anything marked on a tire. */
        OptionalInt integer() {
            return isWhole() && text.length() <= MOST_DIGITS
                    ? OptionalInt.of(Integer.parseInt(text))
                    : OptionalInt.empty();
        }
    }
}
