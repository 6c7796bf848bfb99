package drivetrain.refusal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One refused input, in the words of the person who typed it.
 *
 * @param subject what was being read or checked, such as {@code "axle ratio"}
 * @param given the value as typed, with every character kept; empty where nothing was given
 * @param problem what is wrong, as the second half of a sentence that starts with the value
 * @param allowed what is allowed, with its unit; empty where there is nothing to list
 * @param position the index in {@code given} at which the fault lies, counted from 0
 * @param suggestions at most three near readings, best first
 * @param place the file, line and column, where the value came from a file
 */
public record Refusal(
        String subject,
        String given,
        String problem,
        String allowed,
        OptionalInt position,
        List<String> suggestions,
        Optional<Place> place) {

    private static final int MOST_SUGGESTIONS = 3;
    private static final int LONGEST_SHOWN = 120;

    /** Keeps at most three suggestions. */
    public Refusal {
        suggestions = List.copyOf(suggestions.subList(0, Math.min(MOST_SUGGESTIONS, suggestions.size())));
    }

    /**
     * Starts a refusal.
     *
     * @param subject what was being read or checked
     * @param given the value as typed
     * @param problem what is wrong with it
     * @return the refusal, with nothing allowed named, no position and no suggestion
     */
    public static Refusal of(String subject, String given, String problem) {
        return new Refusal(subject, given, problem, "", OptionalInt.empty(), List.of(), Optional.empty());
    }

    /**
     * Names what was being read, where the one who asked knows it better.
     *
     * @param what what was being read or checked
     * @return a copy that says so
     */
    public Refusal about(String what) {
        return new Refusal(what, given, problem, allowed, position, suggestions, place);
    }

    /**
     * Names what is allowed.
     *
     * @param text what is allowed, with its unit
     * @return a copy that says so
     */
    public Refusal allowing(String text) {
        return new Refusal(subject, given, problem, text, position, suggestions, place);
    }

    /**
     * Names the index at which the fault lies.
     *
     * @param index the index in the given text, counted from 0
     * @return a copy that says so
     */
    public Refusal at(int index) {
        return new Refusal(subject, given, problem, allowed, OptionalInt.of(index), suggestions, place);
    }

    /**
     * Names near readings.
     *
     * @param near the readings, best first; only the first three are kept
     * @return a copy that says so
     */
    public Refusal suggesting(List<String> near) {
        return new Refusal(subject, given, problem, allowed, position, near, place);
    }

    /**
     * Names the file, line and column.
     *
     * @param where the place
     * @return a copy that says so
     */
    public Refusal in(Place where) {
        return new Refusal(subject, given, problem, allowed, position, suggestions, Optional.of(where));
    }

    /**
     * Returns the exception that carries this refusal.
     *
     * @return a new exception
     */
    public RefusedException asException() {
        return new RefusedException(this);
    }

    /**
     * Returns one line that is complete by itself: place, subject, value, problem and what is allowed. A very long value is cut
     * with a mark; what cannot be seen, such as a control character, is shown as {@link VisibleText} does.
     *
     * @return the line, without suggestions
     */
    public String sentence() {
        StringBuilder line = new StringBuilder();
        place.ifPresent(where -> line.append(where).append(": "));
        line.append(subject);
        if (!given.isEmpty()) {
            line.append(" \"").append(shown(given)).append('"');
        }
        line.append(": ").append(problem);
        if (!allowed.isEmpty()) {
            line.append("; allowed: ").append(allowed);
        }
        return VisibleText.of(line.toString());
    }

    private static String shown(String value) {
        return value.length() <= LONGEST_SHOWN ? value : value.substring(0, LONGEST_SHOWN) + "...";
    }
}
