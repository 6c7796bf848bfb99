package drivetrain.repl.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The changes of a set-up that can be undone and redone, oldest first.
 *
 * @param done the changes behind the present set-up
 * @param undone the changes that were undone, the one undone last at the end
 */
public record Timeline(List<Change> done, List<Change> undone) {

    /** How many changes are kept. */
    public static final int LEVELS = 200;

    private static final Timeline EMPTY = new Timeline(List.of(), List.of());

    /** Copies the lists. */
    public Timeline {
        done = List.copyOf(done);
        undone = List.copyOf(undone);
    }

    /**
     * One change.
     *
     * @param what what was done, in the words of the user
     * @param before the set-up before it
     * @param after the set-up after it
     * @param keptBefore where the change opened something: what had last been opened or saved before it
     */
    public record Change(String what, Setup before, Setup after, Optional<Setup> keptBefore) {}

    /**
     * Returns a timeline without changes.
     *
     * @return the empty timeline
     */
    public static Timeline empty() {
        return EMPTY;
    }

    /**
     * Adds a change; what was undone before it can no longer be redone, and the oldest change is forgotten beyond {@link #LEVELS}.
     *
     * @param change the change
     * @return a copy that ends with it
     */
    public Timeline with(Change change) {
        List<Change> kept = done.subList(done.size() < LEVELS ? 0 : done.size() - LEVELS + 1, done.size());
        return new Timeline(append(kept, change), List.of());
    }

    /**
     * Returns the change that {@code undo} takes back.
     *
     * @return the last change, or empty if there is none
     */
    public Optional<Change> lastDone() {
        return last(done);
    }

    /**
     * Returns the change that {@code redo} makes again.
     *
     * @return the change undone last, or empty if there is none
     */
    public Optional<Change> lastUndone() {
        return last(undone);
    }

    Timeline back() {
        return new Timeline(withoutLast(done), append(undone, done.get(done.size() - 1)));
    }

    Timeline forth() {
        return new Timeline(append(done, undone.get(undone.size() - 1)), withoutLast(undone));
    }

    private static Optional<Change> last(List<Change> changes) {
        return changes.isEmpty() ? Optional.empty() : Optional.of(changes.get(changes.size() - 1));
    }

    private static List<Change> withoutLast(List<Change> changes) {
        return changes.subList(0, changes.size() - 1);
    }

    private static List<Change> append(List<Change> changes, Change change) {
        List<Change> longer = new ArrayList<>(changes);
        longer.add(change);
        return longer;
    }
}
