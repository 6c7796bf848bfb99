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
 *
 * <h2>The line in space</h2>
 * Axes are those of ISO 8855: x forward, y to the left, z up. A line runs from the output of the transfer case over the joint centers to the pinion; u<sub>0</sub> is the unit
 * vector of the output, u<sub>i</sub> that of piece i, u<sub>n</sub> that of the pinion, all pointing toward the axle. A slope is positive where it falls toward the axle;
 * an inclinometer on an axis reads asin(-u<sub>z</sub>), on a tube asin(dz / L). A joint center lies off its flange's face along the flange's axis.
 *
 * <p>The operating angle of joint i is b<sub>i</sub> = atan2(|u<sub>i-1</sub> x u<sub>i</sub>|, u<sub>i-1</sub> . u<sub>i</sub>), which is 0 and not undefined where the joint is
 * straight. Root sums of squares and differences of view angles are approximations and are not used. The joint's plane has the normal n<sub>i</sub> = u<sub>i-1</sub> x u<sub>i</sub>;
 * gamma<sub>i</sub> is the signed turn from n<sub>i</sub> to n<sub>i+1</sub> about u<sub>i</sub>, and psi<sub>i</sub> that from the yoke at the transfer case's end of piece i to the yoke at its
 * other end, positive clockwise for one who looks toward the axle.
 *
 * <h2>Motion</h2>
 * A single joint turns its driven shaft by tan a<sub>2</sub> = cos b tan a<sub>1</sub>, angles measured from the normal of the joint's plane to the driving yoke's ears and a quarter turn
 * on at the driven side. From p . q = 0 for the pins of the cross. The speed ratio is cos b / (1 - sin<sup>2</sup> b sin<sup>2</sup> a<sub>1</sub>), the acceleration omega<sup>2</sup> cos b sin<sup>2</sup> b sin 2a<sub>1</sub> /
 * (1 - sin<sup>2</sup> b sin<sup>2</sup> a<sub>1</sub>)<sup>2</sup>, greatest where B x<sup>2</sup> - A x - 2 B = 0 with x = cos 2a<sub>1</sub>, A = 1 - B, B = sin<sup>2</sup> b / 2. The form omega<sup>2</sup> b<sup>2</sup> is 6.9 % low at 30
 * degrees. A line is the laws of its joints one after the other; from ears to ears of a piece the angle goes on by a quarter turn + psi - gamma. The torsional figure is the
 * greatest acceleration of the pinion while the output turns evenly; the inertial figure is that of each piece, under drive (output even) and on the overrun (pinion even). A line that cancels
 * still shakes its own shaft.
 *
 * <p>The first harmonic of all that is a sum of vectors, the equivalent residual angle b<sub>eq</sub> = |sum (-1)<sup>i-1</sup> b<sub>i</sub><sup>2</sup> exp(2j (Psi<sub>i</sub> -
 * Gamma<sub>i</sub>))|<sup>1/2</sup>, Psi and Gamma summed from the first joint: in one plane and in phase the root of |b<sub>1</sub><sup>2</sup> - b<sub>2</sub><sup>2</sup> + b<sub>3</sub><sup>2</sup>|, whichever way each joint
 * bends. A double joint is taken as even and left out. A joint at an angle puts a couple between 0 and T tan b on its driving and between 0 and T sin b on its driven shaft, half
 * steady and half of the second order.
 *
 * <p>Limits are in {@code driveshaft/line-limits.csv}, each with its source: torsional and inertial acceleration after SAE AE-7 (from memory), the installation rule of two vehicle makers'
 * workshop manuals (angles within 1 degree of each other, at most 3, at least half a degree).
 *
 * <h2>Travel</h2>
 * A live axle is a rigid body. Radius arms are clamped to it and pivot in bushes; four links and a panhard rod keep their lengths; the half of a leaf spring at its fixed eye bends
 * into an arc of a circle, which brings the axle nearer to the eye by 2 d<sup>2</sup> / 3 s (a parabola for the arc: within 0.5 mm for 125 mm over 560 mm). Where a suspension holds its axle more than once, as
 * arms and parallel links do in articulation, it stands where the squares of what bushes and links must give are least. Both wheels are taken through all their heights between droop and
 * bump, one against the other, in a grid of 17 by 17; lengths and angles are looked at everywhere and not only at the ends.
 *
 * <h2>Limits of a shop</h2>
 * Every limit above is the shop's to set, as {@link drivetrain.driveshaft.ShaftHouse} names them, but not how nearly axes lie in one plane. The checks take them as an
 * argument; the greatest angle, the rating and the engagement that a part's maker gives come before them.
 *
 * <h2>What the line leaves out</h2>
 * Wind-up of springs and mounts under torque, play, the steering of an unevenly worn double joint, friction of the spline, joints of a steered axle's wheels, and shafts of three or more pieces.
 */
@NullMarked
package drivetrain.driveshaft;

import org.jspecify.annotations.NullMarked;
