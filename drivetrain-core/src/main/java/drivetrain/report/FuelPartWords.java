package drivetrain.report;

import drivetrain.fuel.Conduit;
import drivetrain.fuel.Fuel;
import drivetrain.fuel.FuelFilter;
import drivetrain.fuel.FuelLine;
import drivetrain.fuel.FuelSystem;
import drivetrain.fuel.Injectors;
import drivetrain.fuel.MeasuredPump;
import drivetrain.fuel.Pump;
import drivetrain.fuel.PumpCurve;
import drivetrain.fuel.PumpPoint;
import drivetrain.fuel.Tank;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.UnitSystem;

/** The figures of a part of the fuel supply in one line. */
final class FuelPartWords {

    private FuelPartWords() {}

    static String figures(Object item) {
        if (item instanceof Fuel fuel) {
            return text(Figure.of(fuel.density(), Display.DENSITY)) + " at 15 degC, "
                    + text(Figure.percent(fuel.ethanol(), 0)) + " ethanol";
        } else if (item instanceof Pump pump) {
            return pump(pump);
        } else if (item instanceof Injectors injectors) {
            return text(Figure.of(injectors.each().flow(), Display.MASS_FLOW)) + " at "
                    + text(Figure.of(injectors.each().pressure(), Display.GAUGE_PRESSURE)) + " each";
        } else if (item instanceof Conduit conduit) {
            return conduit.bore().format(Length.MILLIMETER, 1) + " bore "
                    + conduit.material().word();
        } else if (item instanceof FuelFilter filter) {
            return text(Figure.of(filter.loss(), Display.GAUGE_PRESSURE)) + " at "
                    + text(Figure.of(filter.flow(), Display.VOLUME_FLOW));
        } else if (item instanceof FuelLine line) {
            return line.length().format(Length.METER, 1) + " in all";
        } else if (item instanceof FuelSystem system) {
            return system.regulator()
                    .map(regulator -> regulator.layout().word() + " "
                            + text(Figure.of(regulator.setting(), Display.GAUGE_PRESSURE)))
                    .orElse("no regulator given");
        } else if (item instanceof Tank tank) {
            return text(Figure.of(tank.volume(), Display.TANK_VOLUME));
        }
        throw new IllegalArgumentException("no part: " + item);
    }

    private static String pump(Pump pump) {
        if (!(pump instanceof MeasuredPump measured)) {
            return pump.count() + " pumps";
        }
        PumpCurve curve = measured.curves().get(measured.curves().size() - 1);
        PumpPoint last = curve.points().get(curve.points().size() - 1);
        return text(Figure.of(curve.points().get(0).flow(), Display.VOLUME_FLOW)) + " at "
                + text(Figure.of(curve.points().get(0).pressure(), Display.GAUGE_PRESSURE)) + " to "
                + text(Figure.of(last.flow(), Display.VOLUME_FLOW)) + " at "
                + text(Figure.of(last.pressure(), Display.GAUGE_PRESSURE)) + ", "
                + text(Figure.of(curve.voltage(), Display.VOLTAGE));
    }

    private static String text(Figure figure) {
        return figure.text(UnitSystem.US);
    }
}
