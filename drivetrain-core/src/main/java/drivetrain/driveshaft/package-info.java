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
 *
 * <h2>Critical speed</h2>
 * A shaft whirls when it turns as often as it swings freely. The shaft is a beam of stretches of one section each (tube, yokes as bars of their own length and mass,
 * slip stub as a solid bar), with masses, springs and joints between: Timoshenko's beam with rotary inertia, in elements of the exact static shape with consistent
 * mass, K x = w<sup>2</sup> M x. Its ends tilt freely at the joint centers and are held across, firmly or by a spring. Two pieces are one system on the mount of their center bearing, with a joint that
 * tilts freely behind it. A mode that has most of its energy in the mount is a bounce, which the rubber damps and which may be passed; the critical speed is the
 * lowest mode that bends the shaft. The matrices keep within four diagonals, so they are factorized as a band and searched by subspace iteration; that no mode was missed is proven by
 * counting negative pivots (see the decision note). With the usual cut the first frequency is good to 5e-5, the third to 1e-3.
 *
 * <p>A uniform tube has a closed form: with b = pi / L, E I b<sup>4</sup> - w<sup>2</sup> (rho A + rho I b<sup>2</sup> (1 + E / (k G))) + w<sup>4</sup> rho<sup>2</sup> I / (k G) = 0, and without
 * shear and rotary inertia w = (pi / L)<sup>2</sup> sqrt(E I / (rho A)). The latter is what the trade's constants mean: in revolutions a minute and inches they are 7.5 pi sqrt(E / rho) times sqrt(D<sup>2</sup> +
 * d<sup>2</sup>) / L<sup>2</sup>, 4.740e6 at 205 GPa and 7850 kg/m<sup>3</sup>.
 *
 * <p>Limits are those of {@code driveshaft/speed-limits.csv}: up to 0.70 of the critical speed on the road is good and over 0.75 is too much (two makers' pages); a speed that is held
 * should keep 8 % away from half the critical speed where the joints bend more than 3 degrees, because a bent joint shakes twice a turn (two makers' pages).
 *
 * <h2>Strength</h2>
 * Shear stress at the outside T D / (2 J), twist T L / (G J), held against yield in shear; joints and flanges are held against their suppliers' ratings.
 *
 * <h2>Orders</h2>
 * An order is how often a turning part shakes each turn: once from unbalance, twice from a bent joint; a four-stroke engine of z cylinders fires z / 2 times a turn.
 *
 * <h2>What speed and strength leave out</h2>
 * The gyroscopic moments of the turning shaft, which raise the speed of forward whirl by about twice what rotary inertia lowers it (well under 1 % for tubes of
 * vehicles); damping; unbalance and bow, and so the amplitude; the give of joints, splines and welds; buckling of thin tubes in torsion; fatigue; a balance weight or a
 * dent.
 */
@NullMarked
package drivetrain.driveshaft;

import org.jspecify.annotations.NullMarked;
