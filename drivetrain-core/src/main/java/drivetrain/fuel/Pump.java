package drivetrain.fuel;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Current;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What moves the fuel: one measured pump, or several together. */
public sealed interface Pump permits MeasuredPump, PumpSet {

    /**
     * Reads a pump from its literal text.
     *
     * <p>One pump: a voltage, then at least two points of flow at pressure with rising pressure, with the current where it was measured:
     * {@code 13.5 V, 280 L/h at 30 psi 7 A, 210 L/h at 70 psi 11 A}; more voltages may follow. Several: {@code 2 x ... in parallel} or {@code ... + ... in series}, where each is a name
     * on the shelf or such a text.
     *
     * @param text the text
     * @param shelf finds a pump by its name
     * @return the pump, named by the text
     * @throws drivetrain.refusal.RefusedException if the text cannot be read, with the index of the fault
     */
    static Pump parse(String text, Function<String, Optional<Pump>> shelf) {
        return PumpText.read(text, shelf);
    }

    /**
     * Returns the name.
     *
     * @return the name in a catalog, or the literal text
     */
    String name();

    /**
     * Returns the flow.
     *
     * @param pressure the pressure that the pump has to add
     * @param voltage the voltage at the pump's terminals
     * @return the flow; not evaluated beyond what was measured
     */
    Outcome<VolumeFlow> flowAt(Pressure pressure, Voltage voltage);

    /**
     * Returns the current that all pumps together draw.
     *
     * @param pressure the pressure that the pump has to add
     * @param voltage the voltage at the pump's terminals
     * @return the current; not evaluated where none was measured
     */
    Outcome<Current> currentAt(Pressure pressure, Voltage voltage);

    /**
     * Returns the lowest and the highest pressure at which {@link #flowAt} answers.
     *
     * @param voltage the voltage at the pump's terminals
     * @return the pressures; not evaluated at a voltage too far from the measured ones
     */
    Outcome<PressureBand> band(Voltage voltage);

    /**
     * Returns what a flow at a voltage rests on.
     *
     * @param voltage the voltage at the pump's terminals
     * @return the assumptions
     */
    List<Assumption> assumptionsAt(Voltage voltage);

    /**
     * Returns a pump of the same curves whose flow at every pressure and voltage is another one; pressures and currents stay.
     *
     * @param factor what the flows are multiplied by, greater than zero
     * @return the pump, under the same name
     * @throws drivetrain.refusal.RefusedException if a flow is then out of range
     */
    Pump withFlowTimes(double factor);

    /**
     * Returns how many pumps draw current through wires of their own.
     *
     * @return the number, 1 or more
     */
    int count();
}
