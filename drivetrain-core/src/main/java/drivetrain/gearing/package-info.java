/** Gear ratios, speeds, torques and the speedometer. */
@NullMarked
package drivetrain.gearing;

import org.jspecify.annotations.NullMarked;
