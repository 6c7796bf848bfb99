package drivetrain.report;

import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.combination.Slot;
import drivetrain.combination.Vehicle;
import drivetrain.driveshaft.Driveshaft;
import drivetrain.driveshaft.LineSurvey;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.Suspension;
import drivetrain.engine.Engine;
import drivetrain.engine.OperatingPoint;
import drivetrain.engine.TorqueCurve;
import drivetrain.gearing.AxleRatio;
import drivetrain.gearing.HubReduction;
import drivetrain.gearing.Overdrive;
import drivetrain.gearing.Ratio;
import drivetrain.gearing.TransferCase;
import drivetrain.gearing.Transmission;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Mass;
import drivetrain.quantity.UnitSystem;
import drivetrain.tire.Tire;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures of a part in one line, as they would be typed. */
final class PartWords {

    private PartWords() {}

    /** Finds the part that fills a slot itself; a front tire that is only the rear one's is not. */
    static Optional<? extends Part<?>> part(Combination combination, Slot slot) {
        if (combination.specification().choice(slot).isEmpty()) {
            return Optional.empty();
        }
        return switch (slot) {
            case VEHICLE -> combination.vehicle();
            case ENGINE -> combination.engine();
            case TRANSMISSION -> combination.transmission();
            case OVERDRIVE -> combination.overdrive();
            case TRANSFER -> combination.transfer();
            case REAR_AXLE -> combination.rearAxle();
            case FRONT_AXLE -> combination.frontAxle();
            case HUBS -> combination.hubs();
            case TIRE -> combination.tire();
            case FRONT_TIRE -> combination.frontTire();
            case REAR_SHAFT -> combination.shaft(ShaftPlace.REAR).shaft();
            case REAR_LINE -> combination.shaft(ShaftPlace.REAR).line();
            case REAR_SUSPENSION -> combination.shaft(ShaftPlace.REAR).suspension();
            case FRONT_SHAFT -> combination.shaft(ShaftPlace.FRONT).shaft();
            case FRONT_LINE -> combination.shaft(ShaftPlace.FRONT).line();
            case FRONT_SUSPENSION -> combination.shaft(ShaftPlace.FRONT).suspension();
            case FUEL, FUEL_PUMP, FEED_LINE, RETURN_LINE, INJECTORS, FUEL_SYSTEM, TANK ->
                combination.fuelParts().in(slot);
        };
    }

    static String figures(Object item) {
        if (item instanceof Engine engine) {
            return engine(engine);
        } else if (item instanceof Transmission transmission) {
            return transmission.text();
        } else if (item instanceof TransferCase transfer) {
            return transfer.text();
        } else if (item instanceof AxleRatio axle) {
            return axle.text();
        } else if (item instanceof Overdrive overdrive) {
            return overdrive.text();
        } else if (item instanceof HubReduction hubs) {
            return hubs.text();
        } else if (item instanceof Tire tire) {
            return tire.text();
        } else if (item instanceof Driveshaft shaft) {
            return shaft.text();
        } else if (item instanceof LineSurvey line) {
            return line.text();
        } else if (item instanceof Suspension suspension) {
            return suspension.text();
        } else if (item instanceof Vehicle vehicle) {
            return masses(vehicle);
        }
        return FuelPartWords.figures(item);
    }

    /** The peaks instead of a whole curve, which would fill the screen. */
    private static String engine(Engine engine) {
        if (!(engine.torque() instanceof TorqueCurve)) {
            return engine.text();
        }
        List<String> words = new ArrayList<>();
        engine.peakPower().value().ifPresent(peak -> words.add(peak(Figure.of(peak.power(), Display.POWER), peak)));
        engine.peakTorque().value().ifPresent(peak -> words.add(peak(Figure.of(peak.torque(), Display.TORQUE), peak)));
        words.add("max " + Figure.of(engine.maximumSpeed(), Display.ROTATION).text(UnitSystem.US));
        return String.join(", ", words);
    }

    private static String peak(Figure greatest, OperatingPoint point) {
        return greatest.text(UnitSystem.US) + " at "
                + Figure.of(point.speed(), Display.ROTATION).text(UnitSystem.US);
    }

    /** Tells whether a part is written in a whole line of words. */
    static boolean isOfShafts(Object item) {
        return item instanceof Driveshaft || item instanceof LineSurvey || item instanceof Suspension;
    }

    /** The ratio of a tooth pair as a decimal; empty for every other part. */
    static String ratio(Object item) {
        if (item instanceof AxleRatio axle) {
            return decimal(axle.ratio());
        }
        return item instanceof HubReduction hubs ? decimal(hubs.ratio()) : "";
    }

    private static String decimal(Ratio ratio) {
        return ratio.isPair() ? ratio.figure().text(UnitSystem.US) : "";
    }

    private static String masses(Vehicle vehicle) {
        List<String> words = new ArrayList<>();
        add(words, "mass", vehicle.mass());
        add(words, "front", vehicle.frontAxleLoad());
        add(words, "rear", vehicle.rearAxleLoad());
        vehicle.road()
                .dragArea()
                .ifPresent(area ->
                        words.add("drag " + Figure.of(area, Display.DRAG_AREA).text(UnitSystem.BOTH)));
        return String.join(", ", words);
    }

    private static void add(List<String> words, String name, Optional<Mass> mass) {
        mass.ifPresent(
                known -> words.add(name + " " + Figure.of(known, Display.MASS).text(UnitSystem.BOTH)));
    }
}
