/**
 * From one drivetrain package to the right one.
 *
 * <p>Everything here is about {@link drivetrain.comparison.Measure}s: single numbers of an assessment, such as the crawl ratio. No formula of the trade
 * stands in this package; every number is that of the assessment, and what is computed here is computed from such numbers:
 *
 * <ul>
 *   <li>{@link drivetrain.comparison.SideBySide}: packages next to each other, each measure with its change against the first one,
 *       {@code x / x_1 - 1}, and their checks merged. The same with one package and a changed copy of it is a "what if".
 *   <li>{@link drivetrain.comparison.Solve}: the number of one part that makes a measure what is wished. Secant steps on {@code ln x} over {@code ln k}, where
 *       {@code k} is a factor on the part's number. For a product of powers, which most measures are, that line is straight and one step is exact. The part is
 *       then put into the package and the measure asked again: it must agree to 1e-9. Where something else sets the measure, factors from 1/8 to 8 are tried
 *       for a change of sign, then Brent's method. Beside it stand the two parts on the shelf that come nearest; for the tube of a driveshaft those are the
 *       stock tubes, each in this shaft.
 *   <li>{@link drivetrain.comparison.Sweep}: every package that lists of parts allow. What each part adds to a measure is found by asking for a package with
 *       and without it; that the measure then is the product of what its parts add is tried on packages picked by chance, to 1e-9. Such measures go to
 *       {@code drivetrain.planner}, which counts and ranks without visiting every package; a measure that is no product is asked for each package. The
 *       rows that are shown are assessed anew. A wish is kept by a figure that equals its limit to twelve digits. Packages are ranked by a weighted sum of
 *       logarithms: with equal weights, one percent of one measure is worth one percent of another.
 *   <li>{@link drivetrain.comparison.Sensitivity}: what one percent more of one part's figure does to each measure, the part's other figures left alone.
 *   <li>{@link drivetrain.comparison.Tolerance}: the range of each measure when figures are known only within tolerances: by extremes, and as quantiles of
 *       seeded random packages. The points of a torque curve are off together at the extremes, each by itself in the random packages; angles read on a shaft
 *       line are each off by themselves in both.
 * </ul>
 *
 * <p>A {@link drivetrain.comparison.Lever} is a figure of a part that can be changed by itself. The tire's is its rolling circumference: a larger tire of the
 * same construction has a proportionally larger one. That of a fuel pump is its whole curve: every flow by the same factor, pressures and currents as they are.
 *
 * <p>A measure is a number above zero, so that it can be weighed by proportion. A margin is therefore kept as the limit over what is asked of it, and an angle
 * is never less than 1e-7 rad.
 *
 * <p>Assumptions: tolerances are independent of each other, and uniform where quantiles are concerned. A part that does not have a figure never keeps a
 * wish about it.
 *
 * <p>Left out: prices and weights of parts, which no catalog entry has; whether two parts can be bolted together.
 *
 * <p>Sources: derived throughout. Seeded chance and quantiles are those of Commons Math (Well19937c; Percentile as it estimates by default).
 */
@NullMarked
package drivetrain.comparison;

import org.jspecify.annotations.NullMarked;
