/**
 * Tires.
 */
@NullMarked
package drivetrain.tire;

import org.jspecify.annotations.NullMarked;
