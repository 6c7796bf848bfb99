package drivetrain.comparison;

import drivetrain.quantity.Angle;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what is uncertain and by how much: {@code tire 1 %}, {@code torque curve 3 %}, {@code angles 0.5 deg}. */
public final class UncertainWords {

    private static final Set<String> CURVE =
            Set.of(UncertainCurve.WORD, "torque", "curve", "curve points", "engine torque");
    private static final Set<String> ANGLES =
            Set.of(UncertainAngles.WORD, "joint angles", "shaft angles", "rear angles", "slopes");
    private static final Scale PERCENT = Scale.percent(2);
    private static final Pattern EITHER_WAY = Pattern.compile("^(?:\\+/-|\\+-|\u00b1)\\s*");
    private static final Pattern SIGN = Pattern.compile("^[-+\u2212]");

    private UncertainWords() {}

    /**
     * Reads one.
     *
     * @param name the words of what is uncertain
     * @param amount its tolerance either way, which may have a plus-or-minus sign ahead
     * @return the uncertain figure
     * @throws RefusedException if either cannot be read or the tolerance is out of range
     */
    public static Uncertain parse(String name, String amount) {
        String word = name.strip().toLowerCase(Locale.ROOT);
        if (CURVE.contains(word)) {
            return Uncertain.torqueCurve(PERCENT.parse(number(amount)));
        }
        return ANGLES.contains(word)
                ? Uncertain.angles(Angle.parse(number(amount)))
                : Uncertain.of(lever(name), PERCENT.parse(number(amount)));
    }

    /** The number alone: a tolerance counts both ways, so that a sign of its own says nothing. */
    private static String number(String amount) {
        Matcher both = EITHER_WAY.matcher(amount.strip());
        String number = both.replaceFirst("");
        if (SIGN.matcher(number).find()) {
            throw Refusal.of("tolerance", amount.strip(), "has a sign, and a tolerance counts both ways")
                    .allowing("a number without a sign, such as 1 % or 0.5 deg")
                    .at(0)
                    .asException();
        }
        return number;
    }

    private static Lever lever(String name) {
        try {
            return Lever.parse(name);
        } catch (RefusedException none) {
            throw Refusal.of("part", name.strip(), "has no figure that a tolerance can be given for")
                    .allowing(String.join(", ", words()))
                    .suggesting(NearNames.of(name.strip().toLowerCase(Locale.ROOT), words()))
                    .at(0)
                    .asException();
        }
    }

    /**
     * Tells whether words name something that can be uncertain.
     *
     * @param name the words
     * @return true if {@link #parse} knows them
     */
    public static boolean isKnown(String name) {
        String word = name.strip().toLowerCase(Locale.ROOT);
        return CURVE.contains(word) || ANGLES.contains(word) || isLever(word);
    }

    private static boolean isLever(String word) {
        try {
            Lever.parse(word);
            return true;
        } catch (RefusedException none) {
            return false;
        }
    }

    /**
     * Lists the words.
     *
     * @return those of the levers, then the torque curve and the angles
     */
    public static List<String> words() {
        List<String> words = new ArrayList<>(Lever.words());
        words.add(UncertainCurve.WORD);
        words.add(UncertainAngles.WORD);
        return words;
    }

    /**
     * Returns the unit in which a tolerance is given.
     *
     * @param name the words of what is uncertain
     * @return the sign for percent, or degrees
     */
    public static String unit(String name) {
        return name.toLowerCase(Locale.ROOT).contains(UncertainAngles.WORD) ? "deg" : "%";
    }
}
