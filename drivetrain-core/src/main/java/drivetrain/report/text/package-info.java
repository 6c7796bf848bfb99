/**
 * Reports written out.
 *
 * @see drivetrain.report
 */
@NullMarked
package drivetrain.report.text;

import org.jspecify.annotations.NullMarked;
