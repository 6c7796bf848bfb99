/** What the fuzz runs of the rooms share. */
@NullMarked
package drivetrain.fuzz;

import org.jspecify.annotations.NullMarked;
