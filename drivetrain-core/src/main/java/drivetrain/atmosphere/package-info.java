/**
 * The air that an engine breathes and a vehicle moves through: pressure, temperature and density from the elevation, and what humidity takes from them.
 *
 * <h2>Standard atmosphere</h2>
 * Below 20 km the ISO Standard Atmosphere (ISO 2533:1975) and the US Standard Atmosphere 1976 are the same two layers:
 *
 * <pre>
 *   0 to 11 km    T = T0 + L H               p = p0 (T / T0)^(-g0 / (R L))
 *   11 to 20 km   T = T11 = 216.65 K         p = p11 exp(-g0 (H - 11 km) / (R T11))
 *   both          rho = p / (R T)
 * </pre>
 *
 * with T0 = 288.15 K, p0 = 101 325 Pa, L = -6.5 K/km, g0 = 9.806 65 m/s2 and R = 287.052 87 J/(kg K) (8314.32 J/(kmol K) / 28.964 420 kg/kmol). H is
 * the <em>geopotential</em> altitude, for which gravity does not weaken with height. A map shows the <em>geometric</em> elevation z, and
 * H = r z / (r + z) with r = 6 356 766 m: 2 m less at 4000 m, 19 m less at 11 km. {@link drivetrain.atmosphere.Air#standardAt} takes the elevation of the
 * map; {@link drivetrain.atmosphere.StandardAtmosphere} takes the geopotential altitude, as the tables of the standard do. Below sea level the lower layer goes
 * on to -2 km.
 *
 * <p>The standard atmosphere is dry and is a mean over the middle latitudes. The air of a day differs from it: some 3 % of pressure and 20 K
 * either way (common practice, no source). Give the station pressure and the temperature of the day where they are known; the pressure of a weather report is reduced to sea
 * level and is not the station pressure.
 *
 * <h2>Humid air</h2>
 * The vapor pressure is e = U e_w(t), U the relative humidity over water, and Magnus' form
 * e_w = 6.112 hPa exp(17.62 t / (243.12 + t)), t in degC, with the constants that the WMO gives for -45 to 60 degC (WMO-No. 8, annex 4.B). Its error is under 0.6 % of e_w, which is under
 * 0.05 % of the dry pressure at 35 degC. The enhancement factor of moist air (0.5 % of e) is left out. Then, by Dalton's law,
 *
 * <pre>
 *   dry pressure  pd  = p - e
 *   density       rho = pd / (R T) + e / (Rv T),   Rv = 8314.32 / 18.015 28 = 461.51 J/(kg K)
 * </pre>
 *
 * <h2>What it leaves out</h2>
 * Layers above 20 km, wind, and the weather. Corrections of engine power belong to the engine.
 */
@NullMarked
package drivetrain.atmosphere;

import org.jspecify.annotations.NullMarked;
