/**
 * The questions that a build raises, one class each, and their answers.
 *
 * <p>An answer takes parts from a {@link drivetrain.combination.Combination}, brings the rooms' formulas together, and says what it rests on: its
 * {@linkplain drivetrain.assessment.Answer#assumptions() assumptions}, its {@linkplain drivetrain.assessment.Answer#findings() findings}, its
 * {@linkplain drivetrain.assessment.Answer#cautions() cautions} and, on demand, its {@linkplain drivetrain.assessment.Answer#working() working}. Where a
 * part is missing the question is not evaluated and says which part; the other questions are not touched.
 *
 * <h2>The formulas that join rooms</h2>
 * <ul>
 *   <li>Engine speed at a road speed: n = v / r &middot; i, with r the rolling radius (rolling circumference / 2 pi) and i the total ratio. In the trade's units this is
 *       rpm = mph x i x 336.135 / rolling diameter in inches, where 336.135 = 63360 / (60 pi).
 *   <li>An automatic with an unlocked converter turns faster: n / (speed ratio), the speed ratio being turbine speed over pump speed, below 1.
 *   <li>Crawl speed: v = idle speed &middot; r / crawl ratio, clutch engaged. A converter slips at that load, so an automatic creeps slower.
 *   <li>Wheel torque: engine torque x total ratio x the efficiency of every stage, for all driven wheels together.
 *   <li>Driving force: wheel torque / rolling radius, which is what keeps force x road speed = torque x wheel speed. With a converter the greater of
 *       open and locked, where it can lock.
 *   <li>Power at the crank: road resistance x road speed / efficiency of the gear; with a converter that never locks, what its pump takes up for that.
 *   <li>Torque at a naturally aspirated spark-ignition engine in the order's air: stated torque over the factor of SAE J1349. Other engines: as stated, flagged.
 *   <li>Torque in a part: the greatest, over all gears, of the lesser of engine and tire slip.
 * </ul>
 *
 * <h2>What it leaves out</h2>
 * Boost that builds up, engine response, shock, wheel hop, side slopes. A figure for the torque at a wheel is what the engine can send; what a part sees is a
 * question of its own.
 */
@NullMarked
package drivetrain.assessment;

import org.jspecify.annotations.NullMarked;
