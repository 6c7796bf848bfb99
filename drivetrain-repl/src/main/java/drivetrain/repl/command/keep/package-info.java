/**
 * Commands that keep the work, take changes back and set the shell up.
 */
@NullMarked
package drivetrain.repl.command.keep;

import org.jspecify.annotations.NullMarked;
