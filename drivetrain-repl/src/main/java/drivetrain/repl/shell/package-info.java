/**
 * The program: its options, its two ways of running lines, and its screen.
 *
 * <p>Lines from {@code -c}, a script or a pipe are run by {@code Batch} and touch no class of the terminal library.
 * Somebody who types gets {@code InteractiveShell}. Both run the same words through the same interpreter.
 */
@NullMarked
package drivetrain.repl.shell;

import org.jspecify.annotations.NullMarked;
