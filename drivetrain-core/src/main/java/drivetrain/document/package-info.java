/** Placeholder, written below. */
@NullMarked
package drivetrain.document;

import org.jspecify.annotations.NullMarked;
