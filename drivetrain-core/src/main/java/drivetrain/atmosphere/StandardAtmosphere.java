package drivetrain.atmosphere;

import drivetrain.finding.Source;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;

/**
 * The standard atmosphere up to 20 km: ISO 2533:1975, which is the US Standard Atmosphere 1976 there. All altitudes here are geopotential.
 */
public final class StandardAtmosphere {

    /** Temperature at sea level, 288.15 K; ISO 2533:1975, US Standard Atmosphere 1976. */
    static final double SEA_LEVEL_KELVINS = 288.15;

    /** Pressure at sea level, 101 325 Pa; same sources. */
    static final double SEA_LEVEL_PASCALS = 101_325.0;

    /** Change of temperature with altitude in the troposphere, -6.5 K/km; same sources. */
    static final double LAPSE_KELVINS_PER_METER = -6.5e-3;

    /** Altitude of the tropopause, 11 km; same sources. */
    static final double TROPOPAUSE_METERS = 11_000.0;

    /** Standard acceleration of free fall, 9.806 65 m/s2 exactly. */
    static final double GRAVITY = 9.80665;

    /** Gas constant of dry air, 8314.32 J/(kmol K) / 28.964 420 kg/kmol = 287.052 87 J/(kg K); ISO 2533:1975. */
    static final double GAS_CONSTANT = 8314.32 / 28.964420;

    /** Radius of the earth at which the standard gravity holds, 6 356 766 m; same sources. */
    static final double EARTH_RADIUS_METERS = 6_356_766.0;

    /** The lowest altitude, -2 km. */
    public static final Length LOWEST = Length.ofMeters(-2000.0);

    /** The highest altitude, 20 km. */
    public static final Length HIGHEST = Length.ofMeters(20_000.0);

    /** Where the layers and the constants come from. */
    public static final Source SOURCE =
            Source.standard("ISO 2533:1975 Standard Atmosphere; US Standard Atmosphere 1976");

    private static final double EXPONENT = -GRAVITY / (GAS_CONSTANT * LAPSE_KELVINS_PER_METER);
    private static final double TROPOPAUSE_KELVINS = SEA_LEVEL_KELVINS + LAPSE_KELVINS_PER_METER * TROPOPAUSE_METERS;
    private static final double TROPOPAUSE_PASCALS =
            SEA_LEVEL_PASCALS * Math.pow(TROPOPAUSE_KELVINS / SEA_LEVEL_KELVINS, EXPONENT);

    private StandardAtmosphere() {}

    /**
     * Returns the dry air of the standard at an altitude.
     *
     * @param geopotential the geopotential altitude, {@link #LOWEST} to {@link #HIGHEST}
     * @return the air
     * @throws drivetrain.refusal.RefusedException if the altitude is out of range
     */
    public static Air at(Length geopotential) {
        double h = geopotential
                .requireBetween("geopotential altitude", LOWEST, HIGHEST, Length.METER)
                .si();
        return air(h);
    }

    /** Returns the air at a geopotential altitude that the caller has checked. */
    static Air air(double geopotentialMeters) {
        return Air.of(
                Pressure.ofPascals(pascals(geopotentialMeters)), Temperature.ofKelvins(kelvins(geopotentialMeters)));
    }

    /**
     * Returns the geopotential altitude of a point at a geometric elevation.
     *
     * @param elevation the elevation that a map shows, {@link #LOWEST} to {@link #HIGHEST}
     * @return r z / (r + z) with r = 6 356 766 m
     * @throws drivetrain.refusal.RefusedException if the elevation is out of range
     */
    public static Length geopotential(Length elevation) {
        double z = elevation
                .requireBetween("elevation", LOWEST, HIGHEST, Length.METER)
                .si();
        return Length.ofMeters(EARTH_RADIUS_METERS * z / (EARTH_RADIUS_METERS + z));
    }

    static double kelvins(double geopotentialMeters) {
        return geopotentialMeters < TROPOPAUSE_METERS
                ? SEA_LEVEL_KELVINS + LAPSE_KELVINS_PER_METER * geopotentialMeters
                : TROPOPAUSE_KELVINS;
    }

    static double pascals(double geopotentialMeters) {
        if (geopotentialMeters < TROPOPAUSE_METERS) {
            return SEA_LEVEL_PASCALS * Math.pow(kelvins(geopotentialMeters) / SEA_LEVEL_KELVINS, EXPONENT);
        }
        double above = geopotentialMeters - TROPOPAUSE_METERS;
        return TROPOPAUSE_PASCALS * Math.exp(-GRAVITY * above / (GAS_CONSTANT * TROPOPAUSE_KELVINS));
    }
}
