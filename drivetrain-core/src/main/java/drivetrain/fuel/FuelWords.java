package drivetrain.fuel;

import drivetrain.quantity.AllowedRange;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Quantity;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the literal text of a part of a fuel supply from left to right: words, quantities and names, in clauses that commas or semicolons
 * separate. Every refusal names the whole text and the index of the fault.
 */
final class FuelWords {

    private static final String OUT_OF_RANGE = " is out of range";
    private static final int LONGEST_TEXT = 400;
    private static final int MOST_UNIT_WORDS = 3;
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:(?:[0-9]{1,9}(?: +|-))?[0-9]{1,9}/[0-9]{1,9}(?![0-9])"
                    + "|(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?)");
    private static final Pattern WORD = Pattern.compile("[^\\s,;]+");
    private static final Pattern BLANKS = Pattern.compile("[\\s]*");
    private static final Pattern COUNT = Pattern.compile("([0-9]{1,4})\\s*[xX\\u00D7]\\s+");
    private static final Pattern CLAUSE = Pattern.compile("[^,;]*");

    private final String subject;
    private final String given;
    private final String allowed;
    private final List<String> keywords;
    private int at;
    private int typed;

    private FuelWords(String subject, String given, String allowed, List<String> keywords) {
        this.subject = subject;
        this.given = given;
        this.allowed = allowed;
        this.keywords = keywords;
    }

    static FuelWords of(String subject, String given, String allowed, List<String> keywords) {
        FuelWords words = new FuelWords(subject, given, allowed, keywords);
        if (given.length() > LONGEST_TEXT) {
            throw Refusal.of(subject, given.substring(0, 40) + "...", "is too long")
                    .allowing("at most " + LONGEST_TEXT + " characters")
                    .at(0)
                    .asException();
        }
        words.skipBlanks();
        if (words.atEnd()) {
            throw words.refusal("is empty", 0);
        }
        return words;
    }

    int position() {
        return at;
    }

    boolean atEnd() {
        return at == given.length();
    }

    /** Tells whether the clause ends here. */
    boolean atClauseEnd() {
        return atEnd() || given.charAt(at) == ',' || given.charAt(at) == ';';
    }

    /** Steps over the separator to the next clause; a separator that separates nothing is refused. */
    boolean nextClause() {
        if (atEnd()) {
            return false;
        }
        if (!atClauseEnd()) {
            throw notUnderstood();
        }
        int separator = at;
        at++;
        skipBlanks();
        if (atClauseEnd()) {
            throw refusal("has a \"" + given.charAt(separator) + "\" that separates nothing", separator);
        }
        return true;
    }

    boolean atNumber() {
        return NUMBER.matcher(given).region(at, given.length()).lookingAt();
    }

    /** Takes the next word if it is the keyword. */
    boolean takes(String keyword) {
        Matcher word = word();
        if (word.lookingAt() && word.group().toLowerCase(Locale.ROOT).equals(keyword)) {
            step(word.end());
            return true;
        }
        return false;
    }

    /** Takes a count such as {@code 8 x}, if one stands here. */
    Optional<Integer> count(int most, String what) {
        Matcher count = COUNT.matcher(given).region(at, given.length());
        if (!count.lookingAt()) {
            return Optional.empty();
        }
        int number = Integer.parseInt(count.group(1));
        if (number < 1 || number > most) {
            throw Refusal.of(subject, given, "has " + number + " " + what)
                    .allowing("1 to " + most)
                    .at(at)
                    .asException();
        }
        step(count.end());
        return Optional.of(number);
    }

    /** Takes a quantity of a kind if one stands here; a number with another unit is left. */
    <Q extends Quantity<Q>> Optional<Q> find(Kind<Q> kind) {
        for (int end : measuredEnds()) {
            String unit = given.substring(numberEnd(), end).strip();
            if (kind.unit(unit).isPresent()) {
                typed = at;
                Q quantity = located(at, () -> kind.parse(given.substring(at, end)));
                step(end);
                return Optional.of(quantity);
            }
        }
        return Optional.empty();
    }

    /** Takes a quantity; anything else is refused in the kind's own words. */
    <Q extends Quantity<Q>> Q take(Kind<Q> kind, String what) {
        Optional<Q> found = find(kind);
        if (found.isPresent()) {
            return found.get();
        }
        if (!atNumber()) {
            throw refusal("has no " + what + " here", at);
        }
        int end = decimalComma()
                ? numberEnd() + 1
                : measuredEnds().stream().reduce((more, fewest) -> fewest).orElse(numberEnd());
        return located(at, () -> kind.parse(given.substring(at, end)));
    }

    /** Takes a quantity and checks its range. */
    <Q extends Quantity<Q>> Q take(Kind<Q> kind, String what, Q least, Q most) {
        int start = at;
        boolean negative = at < given.length() && given.charAt(at) == '-' && least.si() >= 0.0;
        try {
            return requireTyped(kind, take(kind, what), what, least, most);
        } catch (RefusedException refused) {
            Refusal why = refused.refusal();
            throw negative && !why.problem().contains(OUT_OF_RANGE)
                    ? Refusal.of(subject, given, what + " is negative, and " + why.problem())
                            .allowing(why.allowed())
                            .suggesting(why.suggestions())
                            .at(why.position().orElse(start))
                            .asException()
                    : refused;
        }
    }

    /** Checks the range of the quantity that was taken last; the range is worded in the unit in which it was typed. */
    <Q extends Quantity<Q>> Q requireTyped(Kind<Q> kind, Q quantity, String what, Q least, Q most) {
        if (!quantity.isLessThan(least) && !quantity.isGreaterThan(most)) {
            return quantity;
        }
        throw Refusal.of(subject, given, what + OUT_OF_RANGE)
                .allowing(AllowedRange.unitOf(kind, given.substring(typed))
                        .map(unit -> AllowedRange.between(least, most, unit))
                        .orElse(least + " to " + most))
                .at(typed)
                .asException();
    }

    /** Takes a percentage and gives it as a fraction. */
    double percent(String what, double least, double most) {
        Matcher number = NUMBER.matcher(given).region(at, given.length());
        if (!number.lookingAt() || number.group().indexOf('/') >= 0) {
            throw refusal("has no " + what + " here", at);
        }
        int start = at;
        double value = Double.parseDouble(number.group());
        step(number.end());
        boolean sign = at < given.length() && given.charAt(at) == '%';
        if (!sign) {
            throw refusal(what + " has no percent sign", number.end());
        }
        step(at + 1);
        if (!(value >= least && value <= most)) {
            throw Refusal.of(subject, given, what + " is out of range")
                    .allowing((int) least + " % to " + (int) most + " %")
                    .at(start)
                    .asException();
        }
        return value / 100.0;
    }

    /** Takes a whole number. */
    int integer(String what, int least, int most) {
        int start = at;
        Matcher word = word();
        if (!word.lookingAt() || !word.group().matches("-?[0-9]{1,4}")) {
            throw refusal("has no " + what + " here", at);
        }
        int number = Integer.parseInt(word.group());
        step(word.end());
        if (number < least || number > most) {
            throw Refusal.of(subject, given, what + " is out of range")
                    .allowing(least + " to " + most)
                    .at(start)
                    .asException();
        }
        return number;
    }

    /** Takes the next word. */
    String word(String what) {
        Matcher word = word();
        if (!word.lookingAt()) {
            throw refusal("has no " + what + " here", at);
        }
        step(word.end());
        return word.group();
    }

    /** Everything up to the end of the clause, left where it stands. */
    String peekClause() {
        Matcher clause = CLAUSE.matcher(given).region(at, given.length());
        clause.lookingAt();
        return clause.group().strip();
    }

    /** Takes everything up to the end of the clause. */
    String clauseRest() {
        Matcher clause = CLAUSE.matcher(given).region(at, given.length());
        clause.lookingAt();
        String rest = clause.group().strip();
        step(clause.end());
        return rest;
    }

    /** Runs a reading of a piece that starts at an index and puts its refusal into the whole text. */
    <T> T located(int start, Supplier<T> reading) {
        try {
            return reading.get();
        } catch (RefusedException e) {
            Refusal inner = e.refusal();
            if (inner.given().equals(given) && inner.subject().equals(subject)) {
                throw inner.position().isPresent() ? e : inner.at(start).asException();
            }
            String value = inner.given().isEmpty() ? " " : " \"" + inner.given() + "\" ";
            boolean whole = inner.given().equals(given.strip());
            int position = Math.min(given.length(), start + inner.position().orElse(0));
            RefusedException outer = Refusal.of(
                            subject, given, whole ? inner.problem() : inner.subject() + value + inner.problem())
                    .allowing(inner.allowed())
                    .suggesting(inner.suggestions())
                    .at(position)
                    .asException();
            outer.initCause(e);
            throw outer;
        }
    }

    <T> Optional<T> once(Optional<T> before, T now, int start, String what) {
        if (before.isPresent()) {
            throw refusal("gives " + what + " twice", start);
        }
        return Optional.of(now);
    }

    RefusedException notUnderstood() {
        if (decimalComma()) {
            return refusal("has a comma; write the decimals after a point", at);
        }
        int start = at;
        String word = word("word");
        return Refusal.of(subject, given, "\"" + word + "\" is not understood here")
                .allowing(allowed)
                .at(start)
                .suggesting(NearNames.of(word, keywords))
                .asException();
    }

    RefusedException refusal(String problem, int position) {
        return Refusal.of(subject, given, problem)
                .allowing(allowed)
                .at(position)
                .asException();
    }

    private Matcher word() {
        return WORD.matcher(given).region(at, given.length());
    }

    private boolean decimalComma() {
        int end = numberEnd();
        return end > at
                && end + 1 < given.length()
                && given.charAt(end) == ','
                && Character.isDigit(given.charAt(end + 1));
    }

    private int numberEnd() {
        Matcher number = NUMBER.matcher(given).region(at, given.length());
        return number.lookingAt() ? number.end() : at;
    }

    /** Where a number with a unit of three, two and one words ends. */
    private List<Integer> measuredEnds() {
        List<Integer> ends = new ArrayList<>();
        int end = numberEnd();
        if (end == at) {
            return ends;
        }
        while (ends.size() < MOST_UNIT_WORDS) {
            Matcher blanks = BLANKS.matcher(given).region(end, given.length());
            blanks.lookingAt();
            Matcher word = WORD.matcher(given).region(blanks.end(), given.length());
            if (!word.lookingAt()) {
                break;
            }
            end = word.end();
            ends.add(0, end);
        }
        return ends;
    }

    private void step(int to) {
        at = to;
        skipBlanks();
    }

    private void skipBlanks() {
        Matcher blanks = BLANKS.matcher(given).region(at, given.length());
        blanks.lookingAt();
        at = blanks.end();
    }
}
