package drivetrain.assessment;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.combination.PartKind;
import drivetrain.combination.RoadData;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.combination.Vehicle;
import drivetrain.gearing.Ratio;
import drivetrain.gearing.Speedometer;
import drivetrain.gearing.SpeedometerDrive;
import drivetrain.quantity.Area;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Drivetrain packages of an invented shop. */
final class Builds {

    /** A wagon for the highway: automatic, long axle. */
    static final Specification TOURER = Specification.empty()
            .titled("Tourer")
            .with(Slot.VEHICLE, "wagon")
            .with(Slot.ENGINE, "440 hp at 5900 rpm, 430 lb-ft at 4400 rpm, idle 600 rpm, max 6600 rpm")
            .with(
                    Slot.TRANSMISSION,
                    "4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06 converter stall 2.0 stall-speed 2300 rpm lockup slip 3 %")
            .with(Slot.TRANSFER, "1.00 2.72 part-time")
            .with(Slot.REAR_AXLE, "41/11")
            .with(Slot.FRONT_AXLE, "41/11")
            .with(Slot.TIRE, "LT265/75R16 123/120R rollout 2457 mm")
            .with(
                    Slot.REAR_SHAFT,
                    "tube 3 in x 0.083 in of steel, yokes in phase, joints rated 4600 N\u00B7m to 25 deg, slip 16 teeth 36 mm across 90 mm engaged 40 mm free")
            .with(Slot.REAR_LINE, "output 3.2 deg down, shaft 1290 mm 5.6 deg down 12 mm left, pinion 3 deg down")
            .with(
                    Slot.REAR_SUSPENSION,
                    "leaf springs 560 mm ahead 25 mm below 1000 mm apart, pinion 285 mm ahead 35 mm above, bump 85 mm, droop 110 mm, track 1490 mm")
            .with(Slot.FUEL, "E10, ethanol 10 %, 748 kg/m3, viscosity 0.6 mm2/s, reid 8.7 psi")
            .with(
                    Slot.FUEL_PUMP,
                    "13.5 V, 374 L/h at 0 psi 7 A, 331 L/h at 45 psi 11 A, 281 L/h at 80 psi 15 A, 200 L/h at 120 psi 19 A, 0 L/h at 150 psi 21 A")
            .with(Slot.FEED_LINE, "4.6 m of 7.75 mm tube, filter 6 kPa at 200 L/h, 1.2 m of 7.9 mm hose, 4 elbows")
            .with(Slot.RETURN_LINE, "5 m of 8 mm tube")
            .with(Slot.INJECTORS, "8 x 42 lb/h at 43.5 psi, tested at 0.69 kg/L")
            .with(
                    Slot.FUEL_SYSTEM,
                    "return 58 psi, lift 0.5 m, 13.8 V, low 12.4 V, wire 5 m of AWG 10, fuel at 40 degC, elevation 600 m")
            .with(Slot.TANK, "90 L, usable 84 L, canister 80 g, fill 40 %, day 20 degC to 34 degC")
            .cruisingAt("70 mph");

    /** A hardtop for steep ground: manual with a very low first gear, short axle. */
    static final Specification CRAWLER = Specification.empty()
            .titled("Crawler")
            .with(Slot.VEHICLE, "mass 1900 kg front 1200 kg rear 1400 kg")
            .with(Slot.ENGINE, "350 hp at 5600 rpm, 370 lb-ft at 4200 rpm, idle 600 rpm, max 6000 rpm")
            .with(Slot.TRANSMISSION, "5.61 3.04 1.67 1.00 0.75 reverse 5.05 clutch")
            .with(Slot.TRANSFER, "1.00 4.00 part-time")
            .with(Slot.REAR_AXLE, "41/9")
            .with(Slot.FRONT_AXLE, "41/9")
            .with(Slot.TIRE, "35x12.50R17LT 121Q rollout 2673 mm")
            .cruisingAt("55 mph");

    private static final Speedometer DRIVESHAFT = new Speedometer(
            SpeedometerDrive.DRIVESHAFT,
            Length.ofMillimeters(2400.0),
            Optional.of(Ratio.ofTeeth(41, 10)),
            OptionalInt.of(20),
            OptionalInt.of(8));

    static final RoadData ROAD = new RoadData(
            Optional.of(Area.ofSquareMeters(1.45)),
            Optional.of(Length.ofMillimeters(2850.0)),
            Optional.of(Length.ofMillimeters(760.0)),
            OptionalDouble.of(0.54),
            Optional.empty(),
            Optional.empty());

    private Builds() {}

    static Vehicle wagon(Speedometer speedometer) {
        return new Vehicle(
                "long wagon",
                Optional.of(Mass.ofKilograms(2600.0)),
                Optional.of(Mass.ofKilograms(1500.0)),
                Optional.of(Mass.ofKilograms(1900.0)),
                false,
                Optional.of(speedometer),
                ROAD);
    }

    static Combination of(Specification order) {
        return of(order, wagon(DRIVESHAFT));
    }

    static Combination of(Specification order, Vehicle wagon) {
        Catalog shelf = Catalog.titled("invented shelf")
                .add(PartKind.VEHICLE, Part.of("wagon", "a long wagon", wagon, "test"))
                .build();
        return Combination.resolve(order, shelf);
    }

    static Combination tourer() {
        return of(TOURER);
    }

    static Combination crawler() {
        return of(CRAWLER);
    }
}
