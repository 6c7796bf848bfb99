/**
 * The language: a line is cut into words, its first words name a command, and the command turns the rest into a result.
 *
 * <p>Nothing here knows a terminal or keeps a state. A {@link drivetrain.repl.command.Command} takes the present
 * {@link drivetrain.repl.session.Session} and gives back the next one with an answer; a refusal carries the column of the fault in the line. The
 * commands themselves are in {@code choose}, {@code ask} and {@code keep}.
 */
@NullMarked
package drivetrain.repl.command;

import org.jspecify.annotations.NullMarked;
