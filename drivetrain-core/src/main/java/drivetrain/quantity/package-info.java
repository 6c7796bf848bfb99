/**
 * Quantities: a number that knows what it measures.
 *
 * <p>Every value that crosses a boundary of this library is a quantity. It is held as one {@code double} in the SI unit, is always
 * finite, and names its unit in every factory and getter ({@code Length.ofInches(31.5).toMillimeters()}), as {@code java.time} does. A
 * quantity is read from text with {@code parse}, which refuses what it does not know and guesses nothing: a bare number, a decimal comma,
 * a unit of another kind, or a unit that the trade uses for two different things (a bare {@code gal}) is refused with the reason and the
 * place. What {@code toString} prints, {@code parse} reads back as the same quantity.
 *
 * <h2>Units</h2>
 * Factors are those of NIST Special Publication 811 (2008), appendix B, written as the definitions from which they follow: 1 in = 0.0254 m,
 * 1 lb = 0.453 592 37 kg, 1 lbf = 1 lb x 9.806 65 m/s2, 1 hp = 550 ft·lbf/s, 1 PS = 75 kgf·m/s, 1 US gal = 231 in3,
 * 1 imp gal = 4.546 09 L. Each is exact up to the rounding of the few {@code double} operations that it is written with.
 *
 * <h2>What it leaves out</h2>
 * General products and quotients of quantities. The few that the physics needs (torque at a speed is a power, a speed of rotation at a
 * radius is a road speed) are methods of the quantity that they start from; a room computes with SI numbers within one formula. Feet and
 * inches in one text ({@code 7 ft 4 in}) are not read: a length has one unit.
 */
@NullMarked
package drivetrain.quantity;

import org.jspecify.annotations.NullMarked;
