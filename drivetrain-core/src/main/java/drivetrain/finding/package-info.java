/**
 * What an answer says about itself: how sure it is, what it rests on, and how it was worked out.
 *
 * <ul>
 *   <li>{@link drivetrain.finding.Outcome}: a value, or the reason why there is none. A missing part makes one answer
 *       "not evaluated", never a failure of the rest.
 *   <li>{@link drivetrain.finding.Finding}: one check: what was checked, value, limit, margin, verdict, rule. The worst verdict
 *       of its findings is the verdict of a combination.
 *   <li>{@link drivetrain.finding.Assumption}: what an answer rests on that nobody measured for this vehicle: a default, a rule, a table value.
 *       It is flagged when its source is not one that we can stand behind.
 *   <li>{@link drivetrain.finding.Working}: inputs, formulas, intermediate values, sources. Made only when asked for.
 *   <li>{@link drivetrain.finding.Caution}: where a result can hurt someone, the warning that belongs to it.
 *   <li>{@link drivetrain.finding.Source} and {@link drivetrain.finding.SourceClass}: where a rule or a figure comes from, and how good
 *       that is.
 *   <li>{@link drivetrain.finding.HouseRule}, {@link drivetrain.finding.HouseRange}, {@link drivetrain.finding.HouseLimit}, {@link drivetrain.finding.HouseOrder} and
 *       {@link drivetrain.finding.HouseSet}: what a room lets a shop set for itself, within which range, and what is set.
 * </ul>
 */
@NullMarked
package drivetrain.finding;

import org.jspecify.annotations.NullMarked;
