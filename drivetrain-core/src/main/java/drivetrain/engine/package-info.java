/**
 * Engines: full-load torque and power over engine speed, their peaks, and what the air does to them.
 *
 * <p>Symbols: n engine speed (rad/s in formulas, rpm in text), T torque (N·m), P power (W), 1 at the torque peak, 2 at the power peak.
 *
 * <h2>Torque curve</h2>
 * A {@link drivetrain.engine.TorqueCurve} passes through measured points of torque over speed, 3 at least, by monotone piecewise cubic interpolation
 * ({@link drivetrain.engine.MonotoneCubic}; Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246, with the slopes of Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5
 * (1984) 300-304). It does not overshoot: between two points the torque lies between theirs, so that the peak torque is the highest measured
 * one. A natural spline or Akima's would invent peaks that nobody measured.
 *
 * <p>Power is P = T n. On each interval it is a polynomial of the fourth degree, whose stationary points are the roots of a cubic; the peak power is the greatest
 * of these and of the ends, not a sample.
 *
 * <p>Outside the points nothing is extrapolated: the torque is not evaluated. One exception is flagged: from a stated idle up to the first point
 * the torque of the first point is held, since crawling at idle is a question that a workshop must answer.
 *
 * <h2>Estimate from the peaks</h2>
 * Where only the two peaks are stated (P2 at n2, T1 at n1), a {@link drivetrain.engine.PeakEstimate} draws a curve through them. What is certain:
 * T(n1) = T1 with slope 0, T(n2) = T2 = P2/n2, and the slope of the power is 0 at n2, so that dT/dn = -T2/n2 there; T is at most T1 and at most P2/n everywhere.
 * The curve is the simplest that keeps all of it:
 *
 * <ul>
 *   <li>Between the peaks, the cubic with these end values and slopes. It is monotone (T at most T1) if the end slope is at most 3 times the mean slope
 *       (Fritsch and Carlson). With r = n1/n2 and c = T1 n1/P2 its power is greatest at n2 (d2P/dn2 at most 0) if r^3 - 4 r^2 + 6 r is at least 3 c.
 *   <li>A flatter engine, whose end slope would be too steep, holds T1 from n1 on until the rest of the way makes the ratio just 3.
 *   <li>An engine whose torque falls more than the cubic can follow, as a governed diesel or a boost-limited engine, reaches P2 before n2, where
 *       r^3 - 4 r^2 + 6 r = 3 c (one real root, as the left side rises), and holds it: T = P2/n up to n2.
 *   <li>Outside the peaks the cubic power curve P = P2 (x + x^2 - x^3) of Jazar, Vehicle Dynamics, ch. 4 (from memory), fitted to the nearer peak: above n2,
 *       T = T2 (1 + x - x^2) with x = n/n2; below n1, T = T1 (1 - 0.2 (1 - n/n1)^2).
 * </ul>
 *
 * Torque and its slope are continuous where the parts meet (the slope has a step at n2 only where T2 = T1). The estimate
 * is given from 0.5 n1 to 1.2 n2; beyond, two peaks say nothing. Expect errors of 10 % away from the peaks, more near the lower end and for turbocharged engines below their boost
 * threshold (common practice, no source). Every answer is flagged. Peaks that contradict each other are refused: n2 not above n1, T2 above T1, T1 n1 above P2.
 *
 * <h2>Checks</h2>
 * A stated power should agree with the peak of the curve: up to 2 % it is met, up to 5 % marginal, beyond exceeded (house limits, {@code reference-tables/engine/limits.csv}).
 * Net and gross figures, and figures at the crank and at the wheels, are different things. They are used as stated, and gross or wheel figures are flagged: no
 * conversion between them has a source that would hold for the engine at hand.
 *
 * <h2>Correction for the air</h2>
 * {@link drivetrain.engine.PowerCorrection}: power in the reference air (dry pressure 99 kPa, 25 degC) = factor x power in this air, with the dry pressure pd in kPa and T = t + 273, t in degC:
 *
 * <pre>
 *   SAE J1349, spark         CF    = 1.18 (99/pd) (T/298)^0.5 - 0.18
 *   ISO 1585, spark          alpha = (99/pd)^1.2 (T/298)^0.6
 *   ISO 1585, compression    alpha = fa^fm
 *       natural, driven      fa    = (99/pd) (T/298)^0.7            (exponents from memory)
 *       turbocharged         fa    = (99/pd)^0.7 (T/298)^1.2        (exponents from memory)
 *                            fm    = 0.036 q/r - 1.14, 37.2 to 65 mg/(L cycle); held at 0.2 and 1.2 outside
 * </pre>
 *
 * The spark rules hold for factors of 0.93 to 1.07 (from memory), the compression rule for 0.9 to 1.1 (a diesel engine maker's service manual); beyond it the factor is an extrapolation and the finding says so. 99 kPa dry
 * is about 200 m above sea level; at 25 degC the upper limit of SAE J1349 is reached near 680 m in standard pressure, so that mountain figures are always flagged. A supercharged or turbocharged spark engine does not follow
 * the rules: flagged. The rules assume full load and, for SAE J1349, a mechanical efficiency of 85 %.
 *
 * <h2>What it leaves out</h2>
 * Part load, engine braking, transients, fuel, the engine's inertia, electric motors. Whether an engine of these figures is fit for a vehicle is the assessment's question.
 */
@NullMarked
package drivetrain.engine;

import org.jspecify.annotations.NullMarked;
