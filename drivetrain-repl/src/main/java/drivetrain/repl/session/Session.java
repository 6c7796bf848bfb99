package drivetrain.repl.session;

import drivetrain.combination.Combination;
import drivetrain.combination.Specification;
import drivetrain.quantity.UnitSystem;
import java.util.Optional;

/**
 * One state of the shell.
 *
 * @param setup what is being worked on
 * @param kept what was last opened or saved
 * @param timeline the changes that can be undone and redone
 * @param units the units that figures are shown in
 * @param output the form of the answers
 */
public record Session(Setup setup, Setup kept, Timeline timeline, UnitSystem units, OutputForm output) {

    /**
     * Starts a session in which nothing is chosen.
     *
     * @param shelf the parts that a name can mean
     * @return the session, in US units and with tables
     */
    public static Session on(Shelf shelf) {
        Setup nothing = new Setup(Specification.empty(), shelf);
        return new Session(nothing, nothing, Timeline.empty(), UnitSystem.US, OutputForm.TABLE);
    }

    /**
     * Returns the choices.
     *
     * @return the specification as written
     */
    public Specification specification() {
        return setup.specification();
    }

    /**
     * Returns the title of the work in hand.
     *
     * @return the title, or empty if it has none
     */
    public Optional<String> title() {
        String title = specification().title();
        return title.isEmpty() ? Optional.empty() : Optional.of(title);
    }

    /**
     * Tells whether the choices or the packages set aside differ from those last opened or saved.
     *
     * @return true if something would be lost
     */
    @SuppressWarnings("ReferenceEquality")
    public boolean isChanged() {
        return setup != kept
                && !setup.isWrittenLike(kept); // at a start they are one, and comparing records takes Java a while
    }

    /**
     * Looks the choices up.
     *
     * @return the combination
     * @throws drivetrain.refusal.RefusedException if a choice is neither a name nor a literal
     */
    public Combination combination() {
        return Combination.of(specification(), setup.shelf().catalogFor(specification()));
    }

    /**
     * Changes the choices, if they can all be looked up.
     *
     * @param what what is being done, in the words of the user
     * @param changed the new choices
     * @return the next state, which can be undone
     * @throws drivetrain.refusal.RefusedException if a choice is neither a name nor a literal
     */
    public Session change(String what, Specification changed) {
        return change(what, setup.with(changed), false, specification());
    }

    /**
     * Sets the package in hand aside, to be compared with others.
     *
     * @param what what is being done, in the words of the user
     * @param name the name
     * @return the next state, which can be undone
     */
    public Session keep(String what, String name) {
        return change(what, setup.keeping(name), false, specification());
    }

    /**
     * Replaces the set-up by one that was opened, if all its choices can be looked up.
     *
     * @param what what is being done, in the words of the user
     * @param opened the set-up
     * @return the next state, which can be undone
     * @throws drivetrain.refusal.RefusedException if a choice is neither a name nor a literal
     */
    public Session open(String what, Setup opened) {
        return change(what, opened, true, Specification.empty());
    }

    /**
     * Replaces the set-up by one that came with the program, the choices of which were looked up when the program was built.
     *
     * @param what what is being done, in the words of the user
     * @param opened the set-up
     * @return the next state, which can be undone
     */
    public Session openPacked(String what, Setup opened) {
        return change(what, opened, true, opened.specification());
    }

    private Session change(String what, Setup after, boolean isOpened, Specification known) {
        Optional<Setup> keptBefore = isOpened ? Optional.of(kept) : Optional.empty();
        Timeline longer = timeline.with(new Timeline.Change(what, setup, after, keptBefore));
        Session next = new Session(after, isOpened ? after : kept, longer, units, output);
        next.combination().lookUpUnlike(known);
        return next;
    }

    /**
     * Notes that the choices were saved.
     *
     * @return a copy that counts as unchanged
     */
    public Session saved() {
        return new Session(setup, setup, timeline, units, output);
    }

    /**
     * Takes the last change back.
     *
     * @return the state before it, or empty if there is no change
     */
    public Optional<Session> undo() {
        return timeline.lastDone()
                .map(change ->
                        new Session(change.before(), change.keptBefore().orElse(kept), timeline.back(), units, output));
    }

    /**
     * Makes the change that was undone last again.
     *
     * @return the state after it, or empty if nothing was undone
     */
    public Optional<Session> redo() {
        return timeline.lastUndone()
                .map(change -> new Session(
                        change.after(),
                        change.keptBefore().isPresent() ? change.after() : kept,
                        timeline.forth(),
                        units,
                        output));
    }

    /**
     * Chooses the units.
     *
     * @param chosen the system
     * @return a copy that shows figures in it
     */
    public Session with(UnitSystem chosen) {
        return new Session(setup, kept, timeline, chosen, output);
    }

    /**
     * Chooses the form of the answers.
     *
     * @param chosen the form
     * @return a copy that answers in it
     */
    public Session with(OutputForm chosen) {
        return new Session(setup, kept, timeline, units, chosen);
    }
}
