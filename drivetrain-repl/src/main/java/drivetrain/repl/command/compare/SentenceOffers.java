package drivetrain.repl.command.compare;

import drivetrain.combination.Part;
import drivetrain.comparison.Lever;
import drivetrain.comparison.MeasureWords;
import drivetrain.comparison.Place;
import drivetrain.comparison.UncertainWords;
import drivetrain.repl.command.Offer;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What can stand next in the sentences of this package. */
final class SentenceOffers {

    private SentenceOffers() {}

    /** Offers for lists of parts; {@code ends} are the words that may follow them. */
    static List<Offer> ofLists(Session session, List<String> before, List<String> ends) {
        if (before.isEmpty() || last(before).equals("and")) {
            return places();
        }
        Optional<Place> place = placeAtEnd(before);
        if (place.isPresent()) {
            return parts(session, place.get(), true);
        }
        if (last(before).equals("or")) {
            return lastPlace(before).map(known -> parts(session, known, false)).orElse(List.of());
        }
        List<Offer> offers = new ArrayList<>(Offer.of("or", "and"));
        offers.addAll(words(ends));
        return offers;
    }

    /** Offers for a sweep. */
    static List<Offer> ofSweep(Session session, List<String> before) {
        int where = before.lastIndexOf("where");
        int best = before.lastIndexOf("best");
        int by = before.lastIndexOf("by");
        if (by >= 0) {
            return ofAims(before.subList(by + 1, before.size()), List.of("and", "weight", "near"));
        }
        if (best >= 0) {
            return best == before.size() - 1 ? Offer.of("5", "10", "20") : Offer.of("by");
        }
        return where >= 0
                ? ofWishes(before.subList(where + 1, before.size()), List.of("and", "best", "by"))
                : ofLists(session, before, List.of("where", "best", "by"));
    }

    /** Offers for a front. */
    static List<Offer> ofFront(Session session, List<String> before) {
        int over = before.lastIndexOf("over");
        int where = before.lastIndexOf("where");
        if (where >= 0) {
            return ofWishes(before.subList(where + 1, before.size()), List.of("and"));
        }
        if (over >= 0) {
            return ofLists(session, before.subList(over + 1, before.size()), List.of("where"));
        }
        int against = before.lastIndexOf("against");
        return ofAims(before.subList(against + 1, before.size()), List.of("against", "over"));
    }

    /** Offers for a solution. */
    static List<Offer> ofSolve(List<String> before) {
        int word = before.lastIndexOf("for");
        if (word < 0) {
            return before.isEmpty() ? words(Lever.words()) : Offer.of("for");
        }
        List<String> wish = before.subList(word + 1, before.size());
        if (wish.isEmpty()) {
            return figures();
        }
        return isNumber(last(wish)) ? units(wish.subList(0, wish.size() - 1)) : Offer.of("at");
    }

    /** Offers for tolerances. */
    static List<Offer> ofTolerance(List<String> before) {
        if (before.isEmpty() || last(before).equals("and")) {
            return words(UncertainWords.words());
        }
        String last = last(before);
        if (isNumber(last)) {
            List<String> one = behind(before, "and");
            return Offer.of(UncertainWords.unit(String.join(" ", one)));
        }
        return last.endsWith("%") || last.equals("deg") ? Offer.of("and") : List.of();
    }

    private static List<Offer> ofWishes(List<String> wishes, List<String> ends) {
        List<String> one = behind(wishes, "and");
        if (wishes.contains("between") && !one.isEmpty() && isNumber(one.get(0))) {
            one = behind(wishes.subList(0, wishes.size() - one.size() - 1), "and");
            List<Offer> offers = isNumber(last(wishes)) ? new ArrayList<>(units(one)) : new ArrayList<>();
            offers.addAll(words(ends));
            return offers;
        }
        if (one.isEmpty()) {
            return figures();
        }
        String end = last(one);
        if (isNumber(end)) {
            return unitsOr(one.subList(0, one.size() - 1), ends);
        }
        boolean compared = one.contains("least") || one.contains("most") || one.contains("between");
        if (compared) {
            return end.equals("least") || end.equals("most") || end.equals("between") ? List.of() : words(ends);
        }
        if (end.equals("at")) {
            return Offer.of("least", "most");
        }
        List<Offer> offers = new ArrayList<>(Offer.of("at least", "at most", "between"));
        if (end.equals("rpm") && one.size() == 1) {
            offers.addAll(Offer.of("at"));
        }
        return offers;
    }

    private static List<Offer> ofAims(List<String> aims, List<String> ends) {
        List<String> one = behind(aims, "and");
        if (one.isEmpty()) {
            List<Offer> offers = new ArrayList<>(Offer.of("lowest", "highest"));
            offers.addAll(figures());
            return offers;
        }
        if (one.size() == 1 && List.of("lowest", "highest").contains(last(one))) {
            return figures();
        }
        return isNumber(last(one)) ? unitsOr(one.subList(0, one.size() - 1), ends) : words(ends);
    }

    private static List<Offer> unitsOr(List<String> figure, List<String> ends) {
        List<Offer> units = units(figure);
        return units.isEmpty() ? words(ends) : units;
    }

    /** The units of the figure that the words name; those of a road speed right behind "at". */
    private static List<Offer> units(List<String> figure) {
        if (!figure.isEmpty() && last(figure).equals("at")) {
            return Offer.of("mph", "km/h");
        }
        String text = String.join(" ", figure).toLowerCase(Locale.ROOT);
        String longest = "";
        for (String word : MeasureWords.words().keySet()) {
            boolean named = text.contains(word) || (text.contains("cruise") && word.equals("rpm"));
            longest = named && word.length() > longest.length() ? word : longest;
        }
        return words(MeasureWords.words().getOrDefault(longest, List.of()));
    }

    private static List<String> behind(List<String> words, String separator) {
        return words.subList(words.lastIndexOf(separator) + 1, words.size());
    }

    private static String last(List<String> words) {
        return words.get(words.size() - 1).toLowerCase(Locale.ROOT);
    }

    private static boolean isNumber(String word) {
        return !word.isEmpty() && word.chars().allMatch(c -> (c >= '0' && c <= '9') || c == '.');
    }

    private static Optional<Place> placeAtEnd(List<String> before) {
        int size = before.size();
        Optional<Place> two =
                size < 2 ? Optional.empty() : Place.ofWord(before.get(size - 2) + " " + before.get(size - 1));
        return two.or(() -> Place.ofWord(before.get(size - 1)));
    }

    private static Optional<Place> lastPlace(List<String> before) {
        for (int end = before.size(); end > 0; end--) {
            Optional<Place> place = placeAtEnd(before.subList(0, end));
            if (place.isPresent()) {
                return place;
            }
        }
        return Optional.empty();
    }

    private static List<Offer> places() {
        return words(Place.all().stream().map(Place::word).toList());
    }

    private static List<Offer> parts(Session session, Place place, boolean isFirst) {
        List<Offer> offers = new ArrayList<>();
        if (isFirst) {
            offers.add(new Offer("all", "every one on the shelf"));
        }
        for (Part<?> part : session.setup().shelf().catalog().parts(place.kind())) {
            offers.add(new Offer(part.name(), part.description()));
        }
        return offers;
    }

    private static List<Offer> figures() {
        List<Offer> offers = new ArrayList<>();
        for (Map.Entry<String, List<String>> word : MeasureWords.words().entrySet()) {
            offers.add(new Offer(word.getKey(), String.join(", ", word.getValue())));
        }
        return offers;
    }

    private static List<Offer> words(List<String> words) {
        return Offer.of(words.toArray(String[]::new));
    }
}
