/**
 * Tires: what a size says, how far a tire rolls in one turn, what it carries and how fast it may turn.
 *
 * <h2>Symbols</h2>
 * W nominal section width (mm), a nominal aspect ratio (section height / section width), d nominal rim diameter (25.4 mm for each inch of the rim code),
 * D overall diameter of a new tire, inflated and not loaded (mm), U rolling circumference (mm), r rolling radius (mm), N revolutions per distance,
 * LI load index.
 *
 * <h2>Overall diameter</h2>
 * <ul>
 *   <li>Metric size, {@code 265/75R16}: D = d + 2 W a, from the definition of the aspect ratio. The standards round d and the section height to whole millimetres, which
 *       moves D by at most 2 mm; it is not rounded here. Real tires of one size differ by about 1.5 % from D by tread and maker.
 *   <li>High flotation size, {@code 35x12.50R17LT}: the first number is a nominal diameter. The design diameter is some 12.7 mm less (Tire and Rim
 *       Association, from memory; flagged), or the row of {@code tire/size-diameter.csv} where there is one.
 *   <li>Numeric size, {@code 7.50-16}, and metric size without aspect ratio, {@code 205R16}: the size tells no diameter. It comes from the table row (flagged by the row's
 *       class) or from the user. It is never taken as rim + 2 W, which is 2 % wrong, or from a guessed aspect ratio.
 * </ul>
 * A diameter given with the tire goes before all of these.
 *
 * <h2>Rolling circumference</h2>
 * In this order, and every answer names which:
 * <ol>
 *   <li>the measured roll-out of the loaded tire;
 *   <li>the maker's revolutions per mile or kilometre, U = 1 / N;
 *   <li>radial: U = 3.05 D, the tire-standard rule (ETRTO, UN Global Technical Regulation 15 annex 2; from memory, confirmed by open data and by the size sheets of a tire maker, see the tests);
 *   <li>bias ply: Wong (Theory of Ground Vehicles, from memory) gives an effective radius of 96 % of the free radius for bias-ply and 98 % for radial
 *       tires. Taken alone they would mean U = 0.96 pi D = 3.016 D and 0.98 pi D = 3.079 D, the second of which is 0.9 % more than the rule for radial tires; so only
 *       their proportion is used: U = 3.05 x 96/98 D = 2.988 D. Flagged: a tire of this kind should be rolled out. Bias-belted tires are taken as bias ply; the
 *       belt may add up to 2 %.
 * </ol>
 * U is not pi D, which reads 3 % low in engine speed. The rolling radius is r = U / 2 pi: neither D / 2 nor the height of the hub over the
 * ground. The trade's constant 336 is 63 360 / (60 pi) = 336.135 and wants the rolling diameter U / pi.
 *
 * <h2>Load and speed</h2>
 * The load of a load index and the speed of a speed symbol are tables ({@code tire/load-index.csv}, {@code tire/speed-symbol.csv}; ISO 4000-1, UN Regulations 30 and
 * 54). LI is a step of the R80 series of preferred numbers, 10<sup>(LI + 132)/80</sup> kg, from which the rounded table departs by up to 1.3 %. In {@code 123/120R} the first
 * index is that of a single tire, the second that of each tire of a dual wheel. Letters of load ranges tell strength, not load, and are not computed with.
 *
 * <h2>Doubt and refusal</h2>
 * A roll-out and a maker's figure that disagree by more than 1.5 %, or a measurement that disagrees with the size by more than 5 %, gives a finding; more than 25 % is
 * refused as a slip of the unit. The limits of all checks stand in {@code tire/limits.csv}.
 *
 * <h2>What it leaves out</h2>
 * Wear (a worn tire rolls up to 2 % less), pressure, growth at speed, slip under torque; the lower load capacity above 210 km/h and at low pressure; the second service description
 * that some tires carry; sizes by letters ({@code H78-15}), with rims in millimetres, and of motorcycles, tractors and earthmovers; which rim width a tire needs.
 */
@NullMarked
package drivetrain.tire;

import org.jspecify.annotations.NullMarked;
