package drivetrain.repl.command.compare;

import drivetrain.comparison.PartList;
import drivetrain.comparison.Place;
import drivetrain.refusal.NearNames;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Lists of parts in a sentence: a place, then its parts, then the next place. */
final class Clauses {

    private static final Pattern NEGATIVE = Pattern.compile("[-\u2212][0-9.]");

    private Clauses() {}

    /**
     * A place that the words at an index name.
     *
     * @param place the place
     * @param words how many words name it
     */
    private record Named(Place place, int words) {}

    /** Finds the index of the first of some words, or the count of words if none is there. */
    static int indexOf(Arguments arguments, int from, String... words) {
        for (int i = from; i < arguments.size(); i++) {
            if (arguments.get(i).isAny(words)) {
                return i;
            }
        }
        return arguments.size();
    }

    /** Reads the lists. */
    static List<PartList> lists(Session session, Arguments arguments) {
        List<PartList> lists = new ArrayList<>();
        int at = 0;
        while (at < arguments.size()) {
            if (arguments.get(at).isAny("and") && !lists.isEmpty()) {
                at++;
            }
            int here = at;
            Named named = named(arguments, at).orElseThrow(() -> noPlace(arguments, here));
            int from = at + named.words;
            int to = from;
            while (to < arguments.size() && !endsList(arguments, to)) {
                to++;
            }
            if (from == to) {
                throw arguments
                        .refuse(from, "no parts are named for the " + named.place.word())
                        .allowing("all, names or literals with or between them, a range such as 3.07..5.38 step 0.01, "
                                + "or words of a description")
                        .asException();
            }
            requireNothingNegative(arguments, from, to);
            Arguments parts = arguments.until(to).from(from);
            lists.add(parts.read(text ->
                    PartList.read(named.place, text, session.setup().shelf().catalog())));
            at = to;
        }
        return lists;
    }

    /** Refuses a number below zero, which would otherwise be looked for as text in the names of parts. */
    private static void requireNothingNegative(Arguments arguments, int from, int to) {
        for (int i = from; i < to; i++) {
            if (NEGATIVE.matcher(arguments.get(i).text()).lookingAt()) {
                throw arguments
                        .refuse(i, "must be greater than zero")
                        .allowing("names, or literals above zero")
                        .asException();
            }
        }
    }

    private static boolean endsList(Arguments arguments, int at) {
        boolean isAnd = arguments.get(at).isAny("and");
        boolean isLast = at + 1 == arguments.size();
        return (isAnd && isLast) || named(arguments, isAnd ? at + 1 : at).isPresent();
    }

    private static Optional<Named> named(Arguments arguments, int at) {
        for (int words = Math.min(2, arguments.size() - at); words > 0; words--) {
            Arguments some = arguments.until(at + words).from(at);
            boolean quoted = some.words().stream().anyMatch(word -> word.quoted());
            Optional<Place> place = quoted ? Optional.empty() : Place.ofWord(some.text());
            if (place.isPresent()) {
                return Optional.of(new Named(place.get(), words));
            }
        }
        return Optional.empty();
    }

    private static RuntimeException noPlace(Arguments arguments, int at) {
        String given = at < arguments.size() ? arguments.get(at).text() : "";
        return arguments
                .refuse(at, at < arguments.size() ? "names no place for parts" : "a place and its parts are missing")
                .allowing(
                        String.join(", ", Place.all().stream().map(Place::word).toList()))
                .suggesting(NearNames.of(given, Place.words()))
                .asException();
    }
}
