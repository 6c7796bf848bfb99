/**
 * Gearing: from the engine to the wheels and to the speedometer.
 *
 * <h2>What it computes</h2>
 * Road speed at an engine speed and the inverse, driveshaft speed, crawl ratio, torque in driveshafts, half-shafts and wheels, steps and
 * spread of the gears, overlap of the ranges, what the speedometer shows, and whether front and rear axle agree.
 *
 * <h2>Symbols</h2>
 * {@code i_g} gear, {@code i_a} auxiliary unit, {@code i_r} range of the transfer case, {@code i_x} axle, {@code i_h} hub reduction: turns in for one
 * turn out. {@code e_g} ... {@code e_h}: efficiencies of the same stages. {@code n_e}, {@code n_s}, {@code n_w}: speeds of engine, driveshaft,
 * wheel (rad/s; shown in rpm). {@code T_e}, {@code T_s}, {@code T_x}, {@code T_w}: torques of engine, all driveshafts, all half-shafts, all wheels
 * (N·m). {@code r}: rolling radius, {@code C} = 2 pi r: rolling circumference (m). {@code v}: road speed (m/s).
 *
 * <h2>Equations</h2>
 * <ul>
 *   <li>Ratio of a tooth pair = driven teeth / driving teeth, exactly; 3.73 is the rounded quotient of 41 and 11.
 *   <li>Total ratio {@code i = i_g i_a i_r i_x i_h}; {@code n_w = n_e / i}; {@code v = 2 pi n_w r}, n in turns per second. With a rolling diameter d in inches, mph and
 *       rpm this is the trade's {@code rpm = 336 mph i / d}: 63360 in / (60 pi) = 336.135. It wants the rolling diameter, not the overall one.
 *   <li>Driveshaft {@code n_s = n_e / (i_g i_a i_r)}: in an overdriven gear faster than the engine.
 *   <li>Unlocked converter at cruise: {@code n_e = i n_w / nu} with the speed ratio {@code nu} = turbine / pump = 1 - slip.
 *   <li>Converter behind an engine: at one speed ratio the pump takes up {@code T = (n / K)^2}; stall and full load where that is the engine's torque, by Brent's
 *       method; turbine torque = torque ratio x T; heat = power in less power out. Where only the stall speed is known, {@code K = n / sqrt(T)} there and a common shape.
 *   <li>Crawl ratio: the greatest total ratio of a forward gear. An overdrive is disengaged; an underdrive counts, engaged, because it stands ahead of the
 *       transfer case and can be used in low range. A converter raises the torque at a standstill by its stall torque ratio, never the crawl ratio.
 *   <li>{@code T_s = T_e i_g i_a i_r e_g e_a e_r}, {@code T_x = T_s i_x e_x}, {@code T_w = T_x i_h e_h}: power out = efficiency x power in, stage by stage. A hub
 *       reduction loads neither half-shaft nor driveshaft. These are torques of all shafts together; four driven wheels do not double them. Through an
 *       open center differential each axle has half; with the axles tied one of them may carry all of it.
 *   <li>Step of an upshift {@code q = i_1 / i_2}; engine speed after it = engine speed before it / q at one road speed. Spread = first / last.
 *   <li>Speedometer turned by the driveshaft: shown / true = {@code (C_0 / C) (i_x i_h / i_0)}, the index 0 for what it was calibrated for; turned by wheel sensors:
 *       {@code C_0 / C}. Shown speed falls as the driven speedometer gear gets more teeth, so that a whole count above the exact one shows too
 *       little and is illegal however near it is.
 *   <li>UN Regulation 39, 5.3: {@code 0 <= V1 - V2 <= 0.1 V2 + 4 km/h}, V1 shown, V2 true; equality passes. An exact instrument fails after any larger tire.
 *   <li>Front and rear agree when axle ratio / rolling circumference agree: mismatch {@code m = (i_f / C_f) / (i_r / C_r) - 1}; wind-up of the front driveshaft
 *       against the rear one for each kilometre = {@code m i_r 1000 m / C_r} turns. 41/10 and 37/9 differ by 0.27 %.
 * </ul>
 *
 * <h2>Assumptions and range</h2>
 * Wheels roll without slip; torque converter locked unless a speed ratio is given; speeds and torques of reverse without a sign. Efficiencies are constants at
 * high load and operating temperature: at light load the real ones are lower. A part that states no efficiency gets the default of {@code
 * reference-tables/gearing/mesh-efficiency.csv} by kind of stage (a ratio of exactly 1 counts as direct), and the answer carries the assumption, flagged. One
 * figure holds for the way to the front and to the rear axle. Ratios: gears 0.3 to 20, ranges 0.5 to 10, auxiliary units 0.5 to 5, axles 1.5
 * to 12, hubs 1 to 7; tooth counts 5 to 80; circumferences 1 to 5 m (common practice; what lies outside is refused).
 *
 * <h2>Sources</h2>
 * Kinematics and power balance follow from first principles; the tractive-effort equation is also Gillespie, Fundamentals of Vehicle Dynamics, chapter 2 (from
 * memory). Reference values of efficiencies: Joachim, Börner and Kurz, Gear Technology, September 2012, figure 2. Speedometer limits: UN Regulation No. 39,
 * Revision 1, 5.3; its test speeds (5.2.5) from memory; 49 CFR 393.82 (within 5 mph at 50 mph, commercial motor vehicles), for information. Tooth pairs and the limits of
 * the axle match: common practice.
 *
 * <h2>What it leaves out</h2>
 * Tire slip; losses that depend on speed, load or oil temperature; the torque that winds up between tied axles in a turn; inertia (a torque during a
 * shift is higher); the strength of parts beyond their makers' ratings; planetary center differentials that split
 * unevenly; speedometers driven ahead of the transfer case, which read high in low range.
 */
@NullMarked
package drivetrain.gearing;

import org.jspecify.annotations.NullMarked;
