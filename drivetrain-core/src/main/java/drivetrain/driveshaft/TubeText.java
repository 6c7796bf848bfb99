package drivetrain.driveshaft;

import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a tube: {@code 3 in x 0.083 in}. */
final class TubeText {

    private static final String SUBJECT = "tube";
    private static final String ALLOWED = "outside diameter x wall, such as 3 in x 0.083 in or 76.2 x 2.1 mm";
    private static final int LONGEST_TEXT = 80;
    private static final Pattern TIMES = Pattern.compile("[xX\u00D7]");
    private static final Pattern UNIT = Pattern.compile("[^0-9./\\s+-][^0-9]*$");

    private TubeText() {}

    static Tube read(String text) {
        if (text.length() > LONGEST_TEXT) {
            throw Refusal.of(SUBJECT, text.substring(0, LONGEST_TEXT) + "...", "is too long")
                    .allowing(ALLOWED)
                    .asException();
        }
        Matcher times = TIMES.matcher(text);
        if (!times.find()) {
            throw refusal(text, "has no x between outside diameter and wall", text.length());
        }
        int cross = times.start();
        if (times.find()) {
            throw refusal(text, "has a second x; the length is a word of its own", times.start());
        }
        String wallText = text.substring(cross + 1);
        Length wall = length(text, wallText, cross + 1, wallText);
        String diameterText = text.substring(0, cross);
        Length diameter = length(text, diameterText, 0, withUnit(diameterText, wallText));
        return made(text, diameter, wall, cross);
    }

    private static String withUnit(String diameter, String wall) {
        Matcher unit = UNIT.matcher(wall.strip());
        boolean bare = !diameter.isBlank()
                && Character.isDigit(diameter.strip().charAt(diameter.strip().length() - 1));
        return bare && unit.find() ? diameter.stripTrailing() + " " + unit.group() : diameter;
    }

    private static Length length(String whole, String typed, int start, String read) {
        if (typed.isBlank()) {
            throw refusal(whole, start == 0 ? "has no outside diameter" : "has no wall", start);
        }
        try {
            return Length.parse(read);
        } catch (RefusedException wrong) {
            Refusal why = wrong.refusal();
            String part = start == 0 ? "its outside diameter " : "its wall ";
            throw Refusal.of(SUBJECT, whole, part + why.problem())
                    .allowing(why.allowed())
                    .at(Math.min(whole.length(), start + why.position().orElse(0)))
                    .suggesting(why.suggestions())
                    .asException();
        }
    }

    private static Tube made(String text, Length diameter, Length wall, int cross) {
        try {
            return new Tube(diameter, wall);
        } catch (RefusedException impossible) {
            Refusal why = impossible.refusal();
            throw Refusal.of(
                            SUBJECT, text, "its " + why.subject().substring(SUBJECT.length() + 1) + " " + why.problem())
                    .allowing(why.allowed())
                    .at(why.subject().endsWith("wall") ? firstSign(text, cross + 1) : firstSign(text, 0))
                    .asException();
        }
    }

    private static int firstSign(String text, int from) {
        int at = from;
        while (at < text.length() - 1 && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private static RefusedException refusal(String text, String problem, int position) {
        return Refusal.of(SUBJECT, text, problem).allowing(ALLOWED).at(position).asException();
    }
}
