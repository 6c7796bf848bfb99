package drivetrain.comparison;

import drivetrain.combination.Catalog;
import drivetrain.combination.Part;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The parts that are tried at one place.
 *
 * @param place the place
 * @param choices catalog names and literals, each once, in the order in which they were written
 */
public record PartList(Place place, List<String> choices) {

    /** The most parts in one list. */
    public static final int MOST = 20_000;

    private static final String ALL = "all";
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    /**
     * Copies the list.
     *
     * @throws RefusedException if it is empty or too long
     */
    public PartList {
        choices = List.copyOf(choices);
        if (choices.isEmpty()) {
            throw Refusal.of(place.word(), "", "the list is empty")
                    .allowing("at least one part")
                    .asException();
        }
        if (choices.size() > MOST) {
            throw Refusal.of(place.word(), choices.size() + " parts", "the list is too long")
                    .allowing("at most " + MOST + " parts")
                    .asException();
        }
    }

    /**
     * Reads a list: parts with {@code or} between them. Each is {@code all}, the name of a part, a literal, a literal in which a number is a range
     * ({@code 3.07..5.38 step 0.01}), or words that the name or the description of a part holds.
     *
     * @param place the place
     * @param text the list
     * @param catalog the shelf
     * @return the list
     * @throws RefusedException with the index in the text of what is no part, and near names
     */
    public static PartList read(Place place, String text, Catalog catalog) {
        Set<String> choices = new LinkedHashSet<>();
        int from = 0;
        while (from <= text.length()) {
            int or = text.toLowerCase(Locale.ROOT).indexOf(" or ", from);
            int to = or < 0 ? text.length() : or;
            addItem(choices, place, text, from, to, catalog);
            from = or < 0 ? text.length() + 1 : or + 4;
        }
        return new PartList(place, List.copyOf(choices));
    }

    private static void addItem(Set<String> choices, Place place, String text, int from, int to, Catalog catalog) {
        String item = text.substring(from, to).strip();
        int at = from
                + (text.substring(from, to).length()
                        - text.substring(from, to).stripLeading().length());
        if (item.isEmpty()) {
            throw Refusal.of(place.word(), text.strip(), "a part is missing")
                    .allowing("a name, a literal, words of a description, a range, or all")
                    .at(Math.min(from, text.length()))
                    .asException();
        }
        if (isChoice(place, item, catalog)) {
            choices.add(item);
            return;
        }
        List<String> found = item.equalsIgnoreCase(ALL) ? names(catalog, place) : spread(place, item, at, text);
        if (found.isEmpty()) {
            found = search(catalog, place, item);
        }
        if (found.isEmpty() && item.indexOf(',') >= 0) {
            addEach(choices, place, text, at, item, catalog);
            return;
        }
        if (found.isEmpty()) {
            throw nothing(place, item, at, text, catalog);
        }
        choices.addAll(found);
    }

    /** Parts with commas between them, where the whole is no part. */
    private static void addEach(Set<String> choices, Place place, String text, int at, String item, Catalog catalog) {
        int start = 0;
        while (start <= item.length()) {
            int comma = item.indexOf(',', start);
            int end = comma < 0 ? item.length() : comma;
            addItem(choices, place, text.substring(0, at + end), at + start, at + end, catalog);
            start = end + 1;
        }
    }

    private static boolean isChoice(Place place, String item, Catalog catalog) {
        try {
            catalog.resolve(place.kind(), item);
            return true;
        } catch (RefusedException neither) {
            return false;
        }
    }

    private static List<String> names(Catalog catalog, Place place) {
        return catalog.parts(place.kind()).stream().<String>map(Part::name).toList();
    }

    private static List<String> search(Catalog catalog, Place place, String item) {
        List<String> words = BLANKS.splitAsStream(item.toLowerCase(Locale.ROOT)).toList();
        List<String> found = new ArrayList<>();
        for (Part<?> part : catalog.parts(place.kind())) {
            String all = (part.name() + " " + part.description()).toLowerCase(Locale.ROOT);
            boolean holds = true;
            for (String word : words) {
                holds &= all.contains(word);
            }
            if (holds) {
                found.add(part.name());
            }
        }
        return found;
    }

    /** A literal with ranges in it, as every literal that it stands for; empty if there is no range. */
    private static List<String> spread(Place place, String item, int at, String text) {
        List<String> literals = NumberRange.spread(item, at, text, place.word());
        for (int i = 0; i < literals.size(); i += Math.max(1, literals.size() - 1)) {
            try {
                place.kind().parse(literals.get(i));
            } catch (RefusedException refused) {
                Refusal why = refused.refusal();
                throw Refusal.of(place.word(), text.strip(), "at " + literals.get(i) + ": " + why.problem())
                        .allowing(why.allowed())
                        .at(at)
                        .asException();
            }
        }
        return literals;
    }

    private static RefusedException nothing(Place place, String item, int at, String text, Catalog catalog) {
        List<String> near = NearNames.of(item, names(catalog, place));
        return Refusal.of(place.word(), text.strip(), "\"" + item + "\" is no part, literal or word of a description")
                .allowing("all, or what \"parts " + place.kind().word() + "\" lists, or a literal such as "
                        + place.kind().example())
                .suggesting(near)
                .at(at)
                .asException();
    }
}
