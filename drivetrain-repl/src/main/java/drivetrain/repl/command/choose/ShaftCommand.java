package drivetrain.repl.command.choose;

import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** {@code shaft}: the driveshaft to one axle, the line in which it runs, and the suspension that moves its axle. */
public final class ShaftCommand implements Command {

    private static final String NONE = "none";
    private static final List<Slot> REAR = List.of(Slot.REAR_SHAFT, Slot.REAR_LINE, Slot.REAR_SUSPENSION);
    private static final List<Slot> FRONT = List.of(Slot.FRONT_SHAFT, Slot.FRONT_LINE, Slot.FRONT_SUSPENSION);

    private static final Manual MANUAL = Manual.of(
                    Topic.CHOOSE,
                    "shaft front|rear [line|suspension] [PART|none]",
                    "describe a driveshaft, the line in which it runs as measured, and the suspension of its axle")
            .alias("driveshaft", "propshaft", "propeller shaft", "prop shaft")
            .example(
                    "shaft rear tube 76.2 mm x 2.1 mm of steel, yokes in phase, joints rated 1700 Nm to 30 deg, slip 24 teeth 95 mm engaged 50 mm free",
                    "shaft rear line output 3.5 deg down, shaft 1185 mm 9.2 deg down 40 mm left, pinion 3 deg down",
                    "shaft rear suspension leaf springs 560 mm ahead 25 mm below 1000 mm apart, pinion 260 mm ahead 30 mm above,"
                            + " bump 90 mm, droop 120 mm, track 1490 mm",
                    "shaft rear");

    /** Makes the command. */
    public ShaftCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        if (arguments.isEmpty()) {
            List<Slot> all = new ArrayList<>(FRONT);
            all.addAll(REAR);
            return Result.answer(session, PresentChoice.of(session, all));
        }
        Position position = Position.of(arguments);
        if (position == Position.BOTH) {
            throw arguments
                    .refuse(0, "is not one of the two shafts")
                    .allowing("front or rear, then the shaft, its line or its suspension")
                    .asException();
        }
        List<Slot> slots = position == Position.FRONT ? FRONT : REAR;
        Arguments rest = arguments.from(1);
        if (rest.isEmpty()) {
            return Result.answer(session, PresentChoice.of(session, slots));
        }
        int which = which(rest);
        Slot slot = slots.get(which);
        Arguments part = which == 0 ? rest : rest.from(1);
        return part.isEmpty()
                ? Result.answer(session, PresentChoice.of(session, List.of(slot)))
                : change(session, slot, arguments, part);
    }

    private static int which(Arguments rest) {
        if (rest.get(0).isAny("line", "geometry")) {
            return 1;
        }
        return rest.get(0).isAny("suspension") ? 2 : 0;
    }

    private static Result change(Session session, Slot slot, Arguments arguments, Arguments part) {
        Specification before = session.specification();
        boolean none = part.size() == 1 && part.get(0).isAny(NONE);
        Specification changed = none ? before.without(slot) : before.with(slot, part.text());
        Session next = part.read(text -> session.change(arguments.line().strip(), changed));
        return Result.changed(next, none ? "No " + slot.word() + " is chosen now." : PresentChoice.notice(next, slot));
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (before.isEmpty()) {
            return Offer.of("front", "rear");
        }
        List<Offer> offers = new ArrayList<>();
        String second = before.size() > 1 ? before.get(1).toLowerCase(Locale.ROOT) : "";
        if (before.size() == 1) {
            offers.addAll(Offer.of("line", "suspension"));
            offers.addAll(Shelves.offers(session, Slot.REAR_SHAFT.kind()));
        } else if (before.size() == 2 && second.equals("line")) {
            offers.addAll(Shelves.offers(session, Slot.REAR_LINE.kind()));
        } else if (before.size() == 2 && second.equals("suspension")) {
            offers.addAll(Shelves.offers(session, Slot.REAR_SUSPENSION.kind()));
        } else {
            return List.of();
        }
        offers.add(new Offer(NONE, "none is chosen"));
        return offers;
    }
}
