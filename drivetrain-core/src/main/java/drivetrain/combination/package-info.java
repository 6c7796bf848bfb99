/**
 * A drivetrain package: as written, as a shelf of parts, and as resolved.
 *
 * <ul>
 *   <li>{@link drivetrain.combination.Specification}: what was chosen, in the words in which it was chosen: catalog names and literals. It is
 *       what an order file holds.
 *   <li>{@link drivetrain.combination.Catalog}: the parts that a shop can name, by kind.
 *   <li>{@link drivetrain.combination.Combination}: the parts looked up. Missing ones stay missing; a question that needs one is
 *       answered "not evaluated".
 *   <li>{@link drivetrain.combination.Vehicle}: the one part that belongs to no single room.
 *   <li>{@link drivetrain.combination.HouseLimits}: the limits that a shop sets for itself; those that belong to a room are the
 *       room's to name and to check.
 * </ul>
 *
 * <p>This package looks things up and computes nothing. It is the only place below {@code assessment} that names more than one room.
 */
@NullMarked
package drivetrain.combination;

import org.jspecify.annotations.NullMarked;
