package drivetrain.fuel;

import drivetrain.quantity.Length;
import drivetrain.quantity.Power;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.SpecificFuelConsumption;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Voltage;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a fuel supply is set up and under what conditions it has to work: everything that is no part of its own.
 *
 * @param name the literal text, or the name in a catalog
 * @param regulator the regulator, where it is given
 * @param lift how far the rail lies above the fuel in the tank, -2 to 5 m
 * @param suctionLift how far the pump's inlet lies above the fuel in the tank, -2 to 5 m
 * @param boost the pressure in the manifold above the air outside at full load, 0 to 4 bar
 * @param voltage the voltage of the supply with the engine running, 5 to 60 V
 * @param lowVoltage the lowest voltage at which it still has to keep up
 * @param wire the wires from the battery to the pump
 * @param temperature the temperature of the fuel, -40 to 90 degC
 * @param elevation the elevation above sea level, -400 to 5000 m
 * @param margin the flow to spare above the demand, 0 to 1
 * @param consumption the engine's own full-load consumption, where it was measured
 * @param blower the power that a driven supercharger takes, where the consumption does not include it
 * @param duty the share of the time that the injectors may be open, above 0 to 1
 */
public record FuelSystem(
        String name,
        Optional<Regulator> regulator,
        Optional<Length> lift,
        Optional<Length> suctionLift,
        Optional<Pressure> boost,
        Optional<Voltage> voltage,
        Optional<Voltage> lowVoltage,
        Optional<Wire> wire,
        Optional<Temperature> temperature,
        Optional<Length> elevation,
        OptionalDouble margin,
        Optional<SpecificFuelConsumption> consumption,
        Optional<Power> blower,
        OptionalDouble duty) {

    static final Length LEAST_LIFT = Length.ofMeters(-2.0);
    static final Length MOST_LIFT = Length.ofMeters(5.0);
    static final Pressure NONE = Pressure.ofPascals(0.0);
    static final Pressure MOST_BOOST = Pressure.ofBar(4.0);
    static final Length LEAST_ELEVATION = Length.ofMeters(-400.0);
    static final Length MOST_ELEVATION = Length.ofMeters(5000.0);
    static final Power MOST_BLOWER = Power.ofKilowatts(400.0);

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public FuelSystem {
        lift.ifPresent(height -> height.requireBetween("lift", LEAST_LIFT, MOST_LIFT, Length.METER));
        suctionLift.ifPresent(height -> height.requireBetween("suction lift", LEAST_LIFT, MOST_LIFT, Length.METER));
        boost.ifPresent(pressure -> pressure.requireBetween("boost", NONE, MOST_BOOST, Pressure.BAR));
        voltage.ifPresent(FuelSystem::requireVoltage);
        lowVoltage.ifPresent(FuelSystem::requireVoltage);
        temperature.ifPresent(Fuel::requireCarried);
        elevation.ifPresent(
                height -> height.requireBetween("elevation", LEAST_ELEVATION, MOST_ELEVATION, Length.METER));
        consumption.ifPresent(Consumption::requirePlausible);
        blower.ifPresent(power ->
                power.requireBetween("power of the supercharger", Power.ofWatts(0.0), MOST_BLOWER, Power.KILOWATT));
    }

    static Voltage requireVoltage(Voltage voltage) {
        return voltage.requireBetween(
                "voltage of the supply", PumpCurve.LEAST_VOLTAGE, PumpCurve.MOST_VOLTAGE, Voltage.VOLT);
    }

    /**
     * Returns the words with which the clauses of a literal text begin.
     *
     * @return the words, as {@link #parse} knows them
     */
    public static List<String> words() {
        return SystemText.KEYWORDS;
    }

    /**
     * Reads a set-up from its literal text, in any order with commas between: {@code return 43.5 psi} or {@code returnless 58 psi}, {@code boost-referenced}, {@code lift 0.5 m}, {@code suction-lift 0.2 m},
     * {@code boost 8 psi}, {@code 13.8 V}, {@code low 12.2 V}, {@code wire 5 m of AWG 12} or {@code wire 5 m of 4 mm2}, {@code fuel at 40 degC}, {@code elevation 1600 m},
     * {@code margin 15 %}, {@code burns 0.52 lb/(hp-h)}, {@code blower 45 hp}, {@code duty 85 %}.
     *
     * @param text the text
     * @return the set-up, named by the text
     * @throws drivetrain.refusal.RefusedException if the text cannot be read, with the index of the fault
     */
    public static FuelSystem parse(String text) {
        return new SystemText(text).read();
    }

    /**
     * Returns a set-up of which nothing is known.
     *
     * @return an empty set-up
     */
    public static FuelSystem unknown() {
        return new FuelSystem(
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    /**
     * Returns the lowest voltage at which the supply has to keep up.
     *
     * @return the low voltage, else the voltage
     */
    public Optional<Voltage> worstVoltage() {
        return lowVoltage.or(() -> voltage);
    }
}
