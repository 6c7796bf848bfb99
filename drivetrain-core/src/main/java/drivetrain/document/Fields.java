package drivetrain.document;

import drivetrain.document.Node.Entry;
import drivetrain.document.Node.Group;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** A group of fields of which all names are known; each is asked for as one that must be there or one that may be. */
final class Fields {

    private final String what;
    private final Group group;
    private final List<String> known;

    private Fields(String what, Group group, List<String> known) {
        this.what = what;
        this.group = group;
        this.known = known;
    }

    /**
     * Takes a group.
     *
     * @param what what the group describes, for refusals: {@code engine}
     * @throws RefusedException if it has a field that is not known, with the nearest known names
     */
    static Fields of(String what, Group group, List<String> known) {
        for (Map.Entry<String, Entry> entry : group.entries().entrySet()) {
            String name = entry.getKey();
            if (!known.contains(name)) {
                throw Refusal.of("field", Characters.excerpt(name), "is not a field of " + article(what))
                        .allowing(String.join(", ", known))
                        .suggesting(NearNames.of(name, known))
                        .in(entry.getValue().place())
                        .asException();
            }
        }
        return new Fields(what, group, known);
    }

    private static String article(String what) {
        return ("aeiou".indexOf(what.charAt(0)) >= 0 ? "an " : "a ") + what;
    }

    /** Returns where the group begins. */
    Place place() {
        return group.place();
    }

    boolean has(String field) {
        requireKnown(field);
        return group.entries().containsKey(field);
    }

    /** Returns the value of a field that may be missing. */
    Optional<Value> find(String field) {
        requireKnown(field);
        return Optional.ofNullable(group.entries().get(field)).map(entry -> new Value(field, entry.value()));
    }

    /** Reads a field that may be missing. */
    <T> Optional<T> optional(String field, Function<Value, T> reader) {
        return find(field).map(reader);
    }

    /** Reads a field that must be there. */
    <T> T required(String field, Function<Value, T> reader) {
        return reader.apply(find(field).orElseThrow(() -> refusal("has no " + field)));
    }

    /** Refuses the group as a whole. */
    RefusedException refusal(String problem) {
        return Refusal.of(what, name(), problem).in(place()).asException();
    }

    /** Refuses fields that say the same thing in different ways. */
    void requireAtMostOneOf(String... fields) {
        List<String> given = Arrays.stream(fields).filter(this::has).toList();
        if (given.size() > 1) {
            throw refusal("has " + String.join(" and ", given) + ", of which only one can hold");
        }
    }

    /** Makes a part of what the fields say and puts a place to its refusal. */
    <T> T made(Supplier<T> maker) {
        return new Value(what, group).made(maker);
    }

    /** Returns the name that the group gives itself, so that a refusal can say which one it is about. */
    private String name() {
        Entry entry = group.entries().get("name");
        return entry != null && entry.value() instanceof Node.Scalar scalar ? Characters.excerpt(scalar.text()) : "";
    }

    private void requireKnown(String field) {
        if (!known.contains(field)) {
            throw new IllegalStateException("not declared as a field of " + what + ": " + field);
        }
    }
}
