/**
 * Fuel supply: what an engine needs, what a pump flows here, and what runs out first.
 *
 * <p>Symbols: P power (W), b specific consumption (kg/J), m mass flow, Q volume flow, rho density, nu kinematic viscosity, p pressure (gauge unless called absolute), V voltage, I current.
 *
 * <h2>Demand</h2>
 * m = P b and Q = m / rho. The windows of b by kind of engine ({@code reference-tables/fuel/consumption.csv}) are common practice and flagged; a supply is sized by the upper end. The power that a driven
 * supercharger takes is in b of a supercharged engine; where it is given as a power of its own, b of a naturally aspirated engine goes with P plus that power: never both. 1 lb/(hp·h) = 608.277 g/kWh.
 * Ethanol of mass share w raises b by 1 / (1 - w (1 - H_e/H_g)) at equal efficiency, H the lower heating values. Stoichiometric air is mixed by mass.
 *
 * <p>Density at temperature: API MPMS chapter 11.1 (1980), table 54B ({@link drivetrain.fuel.Fuel#densityAt}), from -40 to 90 degC; for blends with much ethanol it is an approximation.
 *
 * <h2>Pump</h2>
 * A measured curve of flow against pressure at a voltage; straight lines between the points, which read low on a curve that bends down; nothing beyond them. Similarity carries a curve to another voltage:
 * with r = V/V_0 flow Q = r Q_0(p / r2) and current I = r2 I_0(p / r2), the speed taken in proportion to the voltage. Between two measured voltages
 * flow and current at a pressure lie on the straight line; outside them one curve is carried, 0.85 to 1.15 of its voltage at most, which is flagged. In parallel flows add at one pressure; in series pressures add at one flow.
 *
 * <p>Wires: V = V_s - I R, R = resistivity x 2 length / area (copper, IEC 60028, 20 degC; gauges by ASTM B258).
 *
 * <h2>Lines</h2>
 * Darcy and Weisbach, laminar 64/Re to Re 2300, Colebrook and White from 4000, a straight line between, flagged (White, Fluid Mechanics, ch. 6). Fittings by loss coefficients, filters in proportion to the flow.
 * A hose's dash size is not its bore and is refused.
 *
 * <h2>Operating point</h2>
 * p = regulator + boost reference + losses + lift, solved by Brent's method within what was measured ({@link drivetrain.fuel.FuelSupply}). In a return system the feed line carries the whole pump flow; in a returnless
 * one, what the engine burns, and its loss is missing at the rail. Beyond the capacity the pressure in the rail sinks to what the pump can add at that flow.
 *
 * <h2>Suction</h2>
 * Margin = air pressure - vapor pressure - rho g h - losses, all absolute. The vapor pressure at temperature comes from the Reid vapor pressure by US EPA AP-42 chapter 7.1; they are not the same. The margin can be
 * negative whatever the pump.
 *
 * <h2>Injectors</h2>
 * Mass flow as sqrt(pressure difference x density). On a regulator that does not follow the boost, boost takes from the pressure difference. Duty = demand / flow held open; the time that an injector takes to open and
 * close is not in it.
 *
 * <h2>Tank</h2>
 * Expansion by density; warming by recirculation with all electric power kept in the fuel; vapor of a day by the form of Wade and Reddy with the US EPA's coefficients ({@link drivetrain.fuel.TankVapor}).
 *
 * <h2>What it leaves out</h2>
 * Pressure waves in the rail, injector dead time, ageing, the viscosity at temperature, hot wires and contacts, vapor lock in the feed line, the diesel's injection system behind its supply pump, crash safety. A figure
 * of this room is no approval of a tank, a hose or a fitting.
 */
@NullMarked
package drivetrain.fuel;

import org.jspecify.annotations.NullMarked;
