/**
 * Commands that choose parts: by a name on the shelf or by a literal. Without a part they show what is chosen.
 */
@NullMarked
package drivetrain.repl.command.choose;

import org.jspecify.annotations.NullMarked;
