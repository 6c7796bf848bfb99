/**
 * On the road: what resists the vehicle, what the tires can put down, how fast it goes, how steep it climbs, how it gathers speed, and what torque each part
 * between engine and wheels sees.
 *
 * <h2>Symbols</h2>
 * {@code m} mass (kg), {@code g} = 9.80665 m/s2, {@code v} road speed (m/s), {@code w} headwind (m/s), {@code a} slope angle, grade = 100 tan a in percent, {@code c}
 * rolling resistance over load, {@code CdA} drag area (m2), {@code rho} air density (kg/m3), {@code mu} friction over load, {@code s} share of the weight on the front
 * axle, {@code L} wheelbase, {@code h} height of the center of gravity (m), {@code r} rolling radius (m), {@code i} total ratio, {@code e} efficiency, {@code I} moment
 * of inertia (kg m2).
 *
 * <h2>Equations</h2>
 * <ul>
 *   <li>Resistance {@code F = c m g cos a + 1/2 rho CdA (v + w)|v + w| + m g sin a}; power at the wheels {@code P = F v}: drag goes with the speed of the air, power with the
 *       speed of the road. On a hard surface {@code c = c_0 + (0.0095 / 2.4)(v / 100 km/h)^2}.
 *   <li>Grade held by a driving force: {@code a = arcsin(f / sqrt(1 + c^2)) - arctan c}, {@code f = (F - D) / (m g)}. With f = 0.5 and c = 0.015 that is 55.7 %; dropping
 *       the arc sine gives 48.5 % and is wrong.
 *   <li>Load on the front axle {@code W_f = m g cos a s - (F - R) h / L}, on the rear axle the rest. Driving force less rolling resistance is what acts at the ground and shifts
 *       the load, be it for a grade or for acceleration. Grip: rear {@code F = mu m g cos a (1 - s - c h/L) / (1 - mu h/L)}; front {@code F = mu m g cos a (s + c h/L) / (1
 *       + mu h/L)}; center differential open, twice the lighter axle; axles tied, {@code mu m g cos a}.
 *   <li>Steepest grade by grip at a steady speed: rear {@code tan a = (mu (1 - s) - c) / (1 - mu h/L)}; front {@code (mu s - c) / (1 + mu h/L)}; tied {@code mu - c}; never beyond
 *       {@code s L / h}, where the front axle lifts.
 *   <li>Top speed in a gear: the highest root of driving force less resistance, or the end of the gear. Best upshift: where the next gear pulls as hard.
 *   <li>Acceleration {@code dv/dt = (min(F, grip) - resistance) / m_e}, with {@code m_e = m + (I_e i^2 e + I_w) / r^2}: the square of the ratio makes low gears heavy. (The
 *       mass-factor formula of passenger cars is absurd in low range and is not used.) Integrated by the Dormand-Prince 5(4) pair to 1e-8, each gear on its own, with shifts
 *       and wanted speeds found as events.
 *   <li>Torque in a part: the lesser of what the engine can send ({@code T = T_in i e} up to the part) and what the tires hold ({@code T = mu W r / (i e)} behind the part). On
 *       the slip side the efficiency divides. With axles that can be tied, either of them may have to carry all of it.
 * </ul>
 *
 * <h2>Assumptions and range</h2>
 * One vehicle on one plane; still tires; constant coefficients; drag acts at the ground for the axle loads (they are read at low speed). Below the slowest full-load speed of a
 * gear the clutch slips and the force of that speed is held. Mass 100 to 50,000 kg, drag area 0.1 to 10 m2, air density 0.2 to 2 kg/m3, friction up to 1.5, grades asked
 * about up to 100 %: what lies outside is refused.
 *
 * <h2>Sources</h2>
 * Forces and moments follow from first principles; also Gillespie, Fundamentals of Vehicle Dynamics, ch. 2 (from memory). Rolling resistance: Carvill, Mechanical Engineer's Data
 * Handbook, and Marks' Standard Handbook, citing Moyer, as reproduced in public; its rise with speed from a public engineering reference page. Sliding friction: Noon, Engineering
 * Analysis of Vehicular Accidents (1994), as reproduced. Peak friction: Wong, Theory of Ground Vehicles (from memory). Torque in parts: a driveline maker's installation
 * manual (2008). Moments of inertia and drag areas by kind of body: from memory, and shown as such.
 *
 * <h2>What it leaves out</h2>
 * Lift and its moment; the load that driveshaft torque shifts from one rear wheel to the other of a live axle; tire slip as a function of force; sinkage and bulldozing
 * in soft ground beyond the table's coefficient; side slopes; wheel hop and shock; torque that winds up between tied axles in a turn; engine response and boost build-up; brakes.
 */
@NullMarked
package drivetrain.road;

import org.jspecify.annotations.NullMarked;
