/**
 * Answers questions about all combinations of choices without visiting them.
 *
 * <p>A {@link drivetrain.planner.Query} has dimensions (the engines, the axles, the tires ...), each with its choices; constraints that a combination must
 * keep; and objectives by which the passing ones are ranked. The room knows no parts: only {@link drivetrain.planner.Column}s of numbers, and
 * {@link drivetrain.planner.Figure}s that say which columns they depend on and in which direction they move with each. {@link drivetrain.planner.Planner}
 * counts exactly and ranks exactly; what it answers is, to the order, what the plain loop over every combination would answer, on any number of threads.
 *
 * <h2>The idea in one page</h2>
 *
 * <ol>
 *   <li><b>Products become sums.</b> A crawl ratio is first gear x low range x axle. In logarithms that is a sum of one number from each dimension, and a
 *       constraint is an interval for that sum. The least and the greatest that a <i>block</i> of combinations can have are then sums of leasts and of
 *       greatests. The least or greatest of several products is bounded in the same way.
 *   <li><b>Each dimension is an axis with a tree.</b> Choices that no column tells apart are merged into one position with a weight; a choice without a
 *       number that is needed is left out; a constraint about one dimension alone strikes choices out beforehand. The positions are sorted where one order
 *       sorts every column, else ordered so that neighbours are alike. A binary tree over them knows the least and the greatest of every column in each half.
 *   <li><b>Counting skips blocks.</b> The axes are nested. On each, a half of the tree in which a constraint fails for certain is dropped; a constraint that
 *       holds for certain is not looked at again inside; when none is left, the block is counted by multiplying weights.
 *   <li><b>The last axis is searched.</b> It is a long, sorted one. As soon as every other choice that a constraint is about is made, the constraint is an
 *       interval of it, found by a search that starts where the last one ended, and counted by the difference of two prefix sums of weights. The interval
 *       also narrows the bounds by which the axes in between are judged.
 *   <li><b>Ranking goes best first.</b> Scores are weighted sums of logarithms, so they are bounded like figures. The half with the better bound is
 *       descended first, and what cannot beat the worst of the best found so far is dropped. Axes that do not change the score are not run through: their
 *       first passing choices are taken, found by asking the counter whether a start can be completed.
 *   <li><b>Rounding cannot lie.</b> A block is judged only where its sum is farther than 1e-9 from a limit (the sums are good to some 1e-13). What lies
 *       nearer is worked out combination by combination, as the figure itself is defined, and that decides.
 *   <li><b>Order cannot matter.</b> The count is a sum of whole numbers. The ranking is by score, then by the indices of the choices, so that no two
 *       combinations are alike and the best are the same in whichever order they are found.
 * </ol>
 *
 * <p>A {@link drivetrain.planner.Visited} figure declares nothing. Then the combinations that the other constraints leave are visited, a row of the longest axis
 * at a time, in loops that the compiler can turn into vector instructions.
 *
 * <p>Memory grows with the number of choices, not with the number of combinations. Several threads are used only for what takes longer than 5 ms.
 *
 * <h2>Limits</h2>
 *
 * <ul>
 *   <li>Factors of a product lie between 1e-30 and 1e30 and are greater than zero; there are at most nine.
 *   <li>How much is skipped depends on the question. In the worst case, constraints that each need all dimensions and are undecided nearly everywhere, the
 *       work grows with the product of the sizes of all axes but the last.
 *   <li>Fronts are drawn over declared figures only, and treat figures that agree to nine digits as equal.
 * </ul>
 *
 * <p>Sources: all derived; branch and bound, prefix sums and binary search are textbook methods. The tests hold every answer against the plain loop.
 */
@NullMarked
package drivetrain.planner;

import org.jspecify.annotations.NullMarked;
