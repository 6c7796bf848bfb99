/** Answers of the library against general-purpose libraries that it does not use itself. */
@NullMarked
package drivetrain.crosscheck;

import org.jspecify.annotations.NullMarked;
