/** Engines. */
@NullMarked
package drivetrain.engine;

import org.jspecify.annotations.NullMarked;
