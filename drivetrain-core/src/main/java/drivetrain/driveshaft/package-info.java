/**
 * Driveshafts: what they are made of, how fast they may turn, how much torque they carry, and what they make felt.
 *
 * <h2>Symbols</h2>
 * D, d outside and inside diameter of a tube (m), t wall, L length from joint center to joint center (m), A area of the section (m<sup>2</sup>), I second moment
 * of area (m<sup>4</sup>), J polar moment (m<sup>4</sup>), E modulus of elasticity (Pa), G shear modulus (Pa), nu Poisson's ratio, rho density (kg/m<sup>3</sup>),
 * k Timoshenko's shear coefficient.
 *
 * <h2>Materials and tubes</h2>
 * Metals are alike in all directions: G = E / 2 (1 + nu), and yield in shear is the tensile yield strength over the root of 3 (distortion energy). Usual
 * figures are in {@code driveshaft/materials.csv}, each row with its source. A laminate has no usual figures: modulus along the tube, shear modulus and density come
 * from its maker. A figure that no solid has, such as a modulus of 205 MPa, is refused as a slip of its unit. A tube has A = pi/4 (D<sup>2</sup> -
 * d<sup>2</sup>), I = pi/64 (D<sup>4</sup> - d<sup>4</sup>), J = 2 I; a wall of half the diameter makes a solid bar.
 *
 * <p>The shear coefficient of a metal tube is that of Cowper for the hollow circle (Journal of Applied Mechanics 33 (1966) 335-340), with m = d/D: k = 6 (1 + nu) (1 +
 * m<sup>2</sup>)<sup>2</sup> / ((7 + 6 nu) (1 + m<sup>2</sup>)<sup>2</sup> + (20 + 12 nu) m<sup>2</sup>). That of a laminate tube is 1/2, from the energy of the shear flow in a
 * thin wall.
 */
@NullMarked
package drivetrain.driveshaft;

import org.jspecify.annotations.NullMarked;
