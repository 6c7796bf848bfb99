/**
 * The state of the work in hand, immutable: every change is a new state.
 *
 * <ul>
 *   <li>{@link drivetrain.repl.session.Setup}: what is chosen and the shelf that names are looked up on. This is what {@code undo} brings back and
 *       what {@code save} writes.
 *   <li>{@link drivetrain.repl.session.Timeline}: the changes that can be undone and redone.
 *   <li>{@link drivetrain.repl.session.Shelf}: a catalog that is read when a name first needs it.
 *   <li>{@link drivetrain.repl.session.Session}: all of this with the units and the form of the output.
 * </ul>
 *
 * <p>A refused command returns no state at all, so that the one before it stands.
 */
@NullMarked
package drivetrain.repl.session;

import org.jspecify.annotations.NullMarked;
