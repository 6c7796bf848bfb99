package drivetrain.fuel;

import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Voltage;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.Optional;
import org.assertj.core.api.Assertions;

/** Supplies and refusals for the tests. */
final class Supplies {

    static final String PUMP = "13.5 V, 300 L/h at 0 psi 5 A, 255 L/h at 43.5 psi 8 A, 200 L/h at 75 psi 11 A";
    static final String LINE = "4.5 m of 8 mm tube, filter 10 kPa at 200 L/h, 0.8 m of 8 mm hose, 3 elbows";

    private Supplies() {}

    static Pump pump(String text) {
        return Pump.parse(text, name -> Optional.empty());
    }

    static FuelLine line(String text) {
        return FuelLine.parse(text, FuelLine.Shelves.none());
    }

    static FlowingFuel gasoline() {
        return new FlowingFuel(
                Fuel.parse("gasoline, 745 kg/m3, viscosity 0.6 mm2/s, reid 9 psi"), Temperature.ofCelsius(40.0));
    }

    static FuelSupply supply(Regulator.Layout layout, double psi, double volts, Optional<Wire> wire) {
        return new FuelSupply(
                pump(PUMP),
                line(LINE),
                new Regulator(layout, Pressure.ofPsi(psi), true),
                gasoline(),
                Length.ofMeters(0.5),
                Pressure.ofPascals(0.0),
                Voltage.ofVolts(volts),
                wire);
    }

    static FuelSupply supply() {
        return supply(Regulator.Layout.RETURN, 43.5, 13.5, Optional.empty());
    }

    static Refusal refused(Runnable reading) {
        try {
            reading.run();
        } catch (RefusedException e) {
            return e.refusal();
        }
        return Assertions.fail("was not refused");
    }
}
