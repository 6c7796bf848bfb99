package drivetrain.fuel;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.Density;
import drivetrain.quantity.KinematicViscosity;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Volume;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;

/**
 * A fuel.
 *
 * @param name the name in a catalog, or the literal text
 * @param family what it is made of
 * @param ethanol the share of ethanol by volume, 0 to 1; 0 for diesel
 * @param density the density at 15 degC, 653 to 1000 kg/m3
 * @param viscosity the kinematic viscosity at 20 degC, 0.2 to 20 mm2/s
 * @param reidVaporPressure the Reid vapor pressure, 2 to 20 psi; empty for a fuel that hardly evaporates
 * @param assumptions what of it was taken from a table because nobody measured this fuel
 */
public record Fuel(
        String name,
        FuelFamily family,
        double ethanol,
        Density density,
        KinematicViscosity viscosity,
        Optional<Pressure> reidVaporPressure,
        List<Assumption> assumptions) {

    static final Density LEAST_DENSITY = Density.ofKilogramsPerCubicMeter(653.0);
    static final Density MOST_DENSITY = Density.ofKilogramsPerCubicMeter(1000.0);
    static final KinematicViscosity LEAST_VISCOSITY = KinematicViscosity.ofSquareMillimetersPerSecond(0.2);
    static final KinematicViscosity MOST_VISCOSITY = KinematicViscosity.ofSquareMillimetersPerSecond(20.0);
    static final Pressure LEAST_REID = Pressure.ofPsi(2.0);
    static final Pressure MOST_REID = Pressure.ofPsi(20.0);

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range or diesel has ethanol in it
     */
    public Fuel {
        if (name.isBlank()) {
            throw Refusal.of("fuel", name, "has no name").asException();
        }
        density.requireBetween("density of the fuel", LEAST_DENSITY, MOST_DENSITY, Density.KILOGRAM_PER_CUBIC_METER);
        viscosity.requireBetween(
                "viscosity of the fuel",
                LEAST_VISCOSITY,
                MOST_VISCOSITY,
                KinematicViscosity.SQUARE_MILLIMETER_PER_SECOND);
        reidVaporPressure.ifPresent(
                reid -> reid.requireBetween("Reid vapor pressure", LEAST_REID, MOST_REID, Pressure.PSI));
        if (!(ethanol >= 0.0 && ethanol <= 1.0) || (family == FuelFamily.DIESEL && ethanol > 0.0)) {
            throw Refusal.of("ethanol in the fuel", Double.toString(ethanol), "is out of range")
                    .allowing("0 to 1 of the volume in gasoline, 0 in diesel")
                    .asException();
        }
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Returns the words with which the clauses of a literal text begin.
     *
     * @return the words, as {@link #parse} knows them
     */
    public static List<String> words() {
        return FuelText.KEYWORDS;
    }

    /**
     * Reads a fuel from its literal text: {@code gasoline}, {@code E10}, {@code E85} or {@code diesel}, then, each behind a comma and only where it was measured, a density at 15 degC,
     * {@code ethanol 70 %}, {@code viscosity 0.6 mm2/s}, {@code reid 9 psi}.
     *
     * @param text the text
     * @return the fuel, named by the text
     * @throws drivetrain.refusal.RefusedException if the text cannot be read, with the index of the fault
     */
    public static Fuel parse(String text) {
        return FuelText.read(text);
    }

    /**
     * Returns the fuel under another name.
     *
     * @param other the name
     * @return the fuel
     */
    public Fuel withName(String other) {
        return new Fuel(other, family, ethanol, density, viscosity, reidVaporPressure, assumptions);
    }

    /**
     * Returns the density at a temperature.
     *
     * @param temperature the temperature, -40 to 90 degC
     * @return the density
     * @throws drivetrain.refusal.RefusedException if the temperature is out of range
     */
    public Density densityAt(Temperature temperature) {
        return density.times(ThermalExpansion.factor(density, requireCarried(temperature)));
    }

    /**
     * Returns the volume that a volume of the fuel fills at another temperature.
     *
     * @param volume the volume
     * @param from its temperature, -40 to 90 degC
     * @param to the other temperature, -40 to 90 degC
     * @return the volume at the other temperature
     * @throws drivetrain.refusal.RefusedException if a temperature is out of range
     */
    public Volume expand(Volume volume, Temperature from, Temperature to) {
        return volume.times(densityAt(from).ratioTo(densityAt(to)));
    }

    /**
     * Tells whether the properties of fuels are known at a temperature.
     *
     * @param temperature the temperature
     * @return true from -40 to 90 degC
     */
    public static boolean isCarried(Temperature temperature) {
        return FuelLimit.of("fuel-temperature").contains(temperature.toCelsius());
    }

    static Temperature requireCarried(Temperature temperature) {
        FuelLimit range = FuelLimit.of("fuel-temperature");
        if (!isCarried(temperature)) {
            throw Refusal.of("fuel temperature", temperature.format(Temperature.CELSIUS, 1), "is out of range")
                    .allowing((int) range.least() + " degC to " + (int) range.most() + " degC")
                    .asException();
        }
        return temperature;
    }

    /**
     * Returns the pressure at which the fuel boils.
     *
     * @param temperature the temperature, -40 to 90 degC
     * @return the absolute vapor pressure; not evaluated for a fuel without a Reid vapor pressure
     * @throws drivetrain.refusal.RefusedException if the temperature is out of range
     */
    public Outcome<Pressure> vaporPressureAt(Temperature temperature) {
        requireCarried(temperature);
        return Outcome.of(
                        reidVaporPressure,
                        family == FuelFamily.DIESEL
                                ? "diesel hardly evaporates"
                                : "the fuel's Reid vapor pressure is not given")
                .map(reid -> VaporPressure.of(reid, temperature));
    }

    /**
     * Returns the share of ethanol by mass.
     *
     * @return the share, 0 to 1
     */
    public double ethanolByMass() {
        double mass = ethanol * FuelConstant.of("ethanol-density").value() / density.toKilogramsPerCubicMeter();
        return Math.min(1.0, mass);
    }

    /**
     * Returns the mass of air that burns one unit mass of the fuel, mixed by mass.
     *
     * @return the stoichiometric air-fuel ratio
     */
    public double stoichiometricRatio() {
        if (family == FuelFamily.DIESEL) {
            return FuelConstant.of("diesel-air").value();
        }
        double share = ethanolByMass();
        return share * FuelConstant.of("ethanol-air").value()
                + (1.0 - share) * FuelConstant.of("gasoline-air").value();
    }

    /**
     * Returns how much more of the fuel, by mass, has to be burned for the same heat as with the family's plain fuel.
     *
     * @return 1 for a fuel without ethanol, 1.62 for pure ethanol
     */
    public double consumptionFactor() {
        double ratio = FuelConstant.of("ethanol-heating-value").value()
                / FuelConstant.of("gasoline-heating-value").value();
        return 1.0 / (1.0 - ethanolByMass() * (1.0 - ratio));
    }

    double specificHeat() {
        return FuelConstant.of(family.word() + "-specific-heat").value();
    }

    /**
     * Returns where the fuel's expansion with temperature comes from.
     *
     * @return the source
     */
    public Source expansionSource() {
        return ThermalExpansion.source(density);
    }
}
