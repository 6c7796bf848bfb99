package drivetrain.fuel;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.Current;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import java.util.Optional;

/**
 * What the wires leave of the voltage: the voltage at a pump is that of the supply less current times resistance of both ways. Each pump of a set has wires of its own.
 *
 * @param pump the pump
 * @param supply the voltage of the supply
 * @param wire the wires; empty if the voltage is that at the pump
 */
record ElectricFeed(Pump pump, Voltage supply, Optional<Wire> wire) {

    private static final int MOST_STEPS = 60;
    private static final double ACCURACY_VOLTS = 1e-12;

    /** A pressure and the voltage that is left at the pump while it adds that pressure. */
    record End(Pressure pressure, Voltage voltage) {}

    /** The voltage at the pump at a pressure within what it was measured for. */
    Outcome<Voltage> voltageAt(Pressure pressure) {
        return solved(band -> pressure).map(End::voltage);
    }

    Outcome<End> lowestEnd() {
        return solved(PressureBand::lowest);
    }

    Outcome<End> highestEnd() {
        return solved(PressureBand::highest);
    }

    private interface Choice {
        Pressure of(PressureBand band);
    }

    private Outcome<End> solved(Choice choice) {
        Voltage voltage = supply;
        Outcome<End> end = endAt(choice, voltage);
        if (wire.isEmpty()) {
            return end;
        }
        for (int i = 0; i < MOST_STEPS && end.value().isPresent(); i++) {
            Voltage left = supply.minus(drop(end.value().get(), voltage));
            boolean settled = Math.abs(left.minus(voltage).si()) <= ACCURACY_VOLTS;
            voltage = left;
            end = endAt(choice, voltage);
            if (settled) {
                break;
            }
        }
        return end;
    }

    private Outcome<End> endAt(Choice choice, Voltage voltage) {
        return pump.band(voltage).map(band -> new End(choice.of(band), voltage));
    }

    private Voltage drop(End end, Voltage voltage) {
        Outcome<Current> current =
                pump.band(voltage).then(band -> pump.currentAt(clamped(end.pressure(), band), voltage));
        double amperes = current.value().map(Current::toAmperes).orElse(0.0) / pump.count();
        return Voltage.ofVolts(amperes * wire.map(Wire::ohms).orElse(0.0));
    }

    private static Pressure clamped(Pressure pressure, PressureBand band) {
        if (pressure.isLessThan(band.lowest())) {
            return band.lowest();
        }
        return pressure.isGreaterThan(band.highest()) ? band.highest() : pressure;
    }

    /** What the voltage at the pump rests on. */
    Assumption assumption(SupplyPoint point) {
        if (wire.isEmpty()) {
            return Assumption.flagged(
                    "voltage at the pump",
                    "the voltage is taken as that at the pump; what its wires cost is not counted, because they are not given",
                    Source.given("the order's fuel system"));
        }
        return point.current().isEmpty()
                ? Assumption.flagged(
                        "voltage at the pump",
                        "the pump's current was not measured, so that the loss in its wires is not counted",
                        Source.given("the pump's data"))
                : Assumption.of(
                        "wires of the pump",
                        "the wires are copper at 20 degC, the same way there and back; hot copper, switches and plugs cost more",
                        Wire.RESISTIVITY);
    }
}
