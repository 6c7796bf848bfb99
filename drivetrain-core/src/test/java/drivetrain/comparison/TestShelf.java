package drivetrain.comparison;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.combination.PartKind;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import java.util.List;

/** An invented shelf and an order from it. */
final class TestShelf {

    static final Catalog CATALOG = catalog();

    static final String SHAFT = "tube 76.2 mm x 2.1 mm of steel,";

    static final Specification ORDER = Specification.empty()
            .with(Slot.VEHICLE, "mass 2240 kg front 1270 kg rear 1720 kg")
            .with(Slot.ENGINE, "gas-62")
            .with(Slot.TRANSMISSION, "auto-6")
            .with(Slot.TRANSFER, "two-speed")
            .with(Slot.REAR_AXLE, "41/11")
            .with(Slot.FRONT_AXLE, "41/11")
            .with(Slot.TIRE, "tall")
            .with(Slot.REAR_SHAFT, SHAFT + " length 1290 mm, yokes 1.3 kg 60 mm long in phase")
            .with(Slot.FUEL, "E10")
            .cruisingAt("65 mph");

    private TestShelf() {}

    static Combination order() {
        return Combination.resolve(ORDER, CATALOG);
    }

    private static Catalog catalog() {
        Catalog.Builder builder = Catalog.titled("test");
        add(
                builder,
                PartKind.ENGINE,
                "gas-62",
                "6.2 L V8, gasoline",
                "420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, idle 600 rpm, max 6600 rpm");
        add(
                builder,
                PartKind.ENGINE,
                "diesel-30",
                "3.0 L inline six, diesel",
                "220 hp at 3800 rpm, 400 lb-ft at 1800 rpm, idle 750 rpm, max 4400 rpm");
        add(
                builder,
                PartKind.ENGINE,
                "no-idle",
                "4.0 L six of which little is known",
                "190 hp at 4700 rpm, 235 lb-ft at 3000 rpm, max 5200 rpm");
        add(
                builder,
                PartKind.TRANSMISSION,
                "auto-6",
                "six-speed automatic",
                "4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06 converter stall 2.0 lockup");
        add(builder, PartKind.TRANSMISSION, "manual-5", "five-speed manual", "4.91 2.67 1.57 1.00 0.81 reverse 4.65");
        add(
                builder,
                PartKind.TRANSMISSION,
                "manual-4",
                "four-speed manual with a direct top gear",
                "6.32 3.09 1.68 1.00 reverse 6.44");
        add(builder, PartKind.TRANSFER_CASE, "two-speed", "two-speed", "1.00 2.72");
        add(builder, PartKind.TRANSFER_CASE, "deep", "two-speed, deep low range", "1.00 4.00 efficiency 95 %");
        add(builder, PartKind.TRANSFER_CASE, "single", "one range", "1.00");
        for (String pair : List.of("37/12", "41/11", "43/11", "41/10", "37/9", "41/9", "43/8")) {
            builder.add(
                    PartKind.AXLE,
                    Part.of(
                            "rp-" + pair.replace('/', '-'),
                            "ring and pinion " + pair,
                            PartKind.AXLE.parse(pair),
                            "test"));
        }
        add(builder, PartKind.TIRE, "tall", "tall mud tire", "285/75R16 122/119Q rollout 2510 mm");
        add(builder, PartKind.TIRE, "stock", "highway tire", "235/75R16 108S");
        add(builder, PartKind.TIRE, "mid", "all-terrain tire", "265/75R16 123/120R revs 655 rev/mile");
        return builder.build();
    }

    private static <T> void add(Catalog.Builder builder, PartKind<T> kind, String name, String what, String literal) {
        builder.add(kind, Part.of(name, what, kind.parse(literal), "test"));
    }
}
