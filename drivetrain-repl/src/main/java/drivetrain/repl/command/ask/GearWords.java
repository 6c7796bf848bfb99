package drivetrain.repl.command.ask;

import drivetrain.assessment.GearChoice;
import drivetrain.gearing.Range;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Word;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/** The words for a gear and a range: {@code in 5th}, {@code in top low}, {@code low}, {@code 3rd high}. */
final class GearWords {

    private static final List<String> ORDINALS =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth");
    private static final int MOST_GEARS = 18;
    private static final String ALLOWED = "in 1st up to the top gear, in top; low or high behind it";

    private GearWords() {}

    /** Returns the index of the first word that belongs to the gear; the count of words if there is none. */
    static int start(Arguments arguments) {
        for (int i = 0; i < arguments.size(); i++) {
            if (arguments.get(i).isAny("in", "low", "high")) {
                return i;
            }
        }
        return arguments.size();
    }

    /**
     * Reads the gear.
     *
     * @param arguments the words from {@link #start} on; none of them for the top gear in high range
     */
    static GearChoice read(Arguments arguments) {
        int at = 0;
        OptionalInt number = OptionalInt.empty();
        if (at < arguments.size() && arguments.get(at).isAny("in")) {
            if (arguments.size() == 1) {
                throw arguments
                        .refuse(1, "no gear is named behind \"in\"")
                        .allowing(ALLOWED)
                        .asException();
            }
            at++;
            if (!isRange(arguments.get(at))) {
                number = number(arguments, at);
                at++;
            }
        }
        if (at < arguments.size() && arguments.get(at).isAny("gear")) {
            at++;
        }
        Range range = Range.HIGH;
        if (at < arguments.size() && isRange(arguments.get(at))) {
            range = arguments.get(at).isAny("low") ? Range.LOW : Range.HIGH;
            at++;
        }
        if (at < arguments.size() && arguments.get(at).isAny("range")) {
            at++;
        }
        if (at < arguments.size()) {
            throw arguments
                    .refuse(at, "names no gear and no range")
                    .allowing(ALLOWED)
                    .asException();
        }
        return number.isEmpty() ? GearChoice.topOf(range) : GearChoice.of(number.getAsInt(), range);
    }

    private static boolean isRange(Word word) {
        return word.isAny("low", "high");
    }

    private static OptionalInt number(Arguments arguments, int at) {
        String word = arguments.get(at).text().toLowerCase(Locale.ROOT);
        if (word.equals("top")) {
            return OptionalInt.empty();
        }
        int spelled = ORDINALS.indexOf(word);
        if (spelled >= 0) {
            return OptionalInt.of(spelled + 1);
        }
        String digits = withoutEnding(word);
        boolean isNumber =
                !digits.isEmpty() && digits.length() <= 2 && digits.chars().allMatch(c -> c >= '0' && c <= '9');
        int number = isNumber ? Integer.parseInt(digits) : 0;
        if (number < 1 || number > MOST_GEARS) {
            Refusal refusal = arguments.refuse(at, "is not a forward gear");
            throw refusal.allowing(ALLOWED).asException();
        }
        return OptionalInt.of(number);
    }

    private static String withoutEnding(String word) {
        for (String ending : List.of("st", "nd", "rd", "th")) {
            if (word.endsWith(ending)) {
                return word.substring(0, word.length() - 2);
            }
        }
        return word;
    }
}
