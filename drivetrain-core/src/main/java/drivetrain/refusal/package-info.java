/**
 * How the library says no.
 *
 * <p>Every input that cannot be used is refused by one exception type, {@link drivetrain.refusal.RefusedException}, which
 * carries a {@link drivetrain.refusal.Refusal}: what was asked for, the value as it was typed, what is wrong with it, what
 * is allowed with its unit, where in the text the fault lies, and at most three near names. A refusal read from a file also
 * carries its {@link drivetrain.refusal.Place}. Nothing is guessed and nothing is repaired silently.
 *
 * <p>This package stands below every other one: it knows text and positions, but no quantity and no part.
 */
@NullMarked
package drivetrain.refusal;

import org.jspecify.annotations.NullMarked;
