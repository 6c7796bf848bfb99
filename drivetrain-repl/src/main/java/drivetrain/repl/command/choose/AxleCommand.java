package drivetrain.repl.command.choose;

import drivetrain.combination.Part;
import drivetrain.combination.PartKind;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.gearing.AxleRatio;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;

/** {@code axle}: the ring and pinion of both axles, or of one. */
public final class AxleCommand implements Command {

    private static final Manual MANUAL = Manual.of(
                    Topic.CHOOSE,
                    "axle [front|rear] [PART]",
                    "choose the ring and pinion of both axles or of one, by name, teeth or ratio")
            .alias("axles", "diff", "differential", "final drive", "ring and pinion", "rear end")
            .example("axle 41/10", "axle 4.10", "axle front 41/10");

    /** Makes the command. */
    public AxleCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        Position position = Position.of(arguments);
        Arguments part = position.rest(arguments);
        if (part.isEmpty()) {
            return Result.answer(session, PresentChoice.of(session, position.slots(Slot.REAR_AXLE, Slot.FRONT_AXLE)));
        }
        Specification changed = change(session.specification(), position, part.text());
        Session next = part.read(text -> session.change(arguments.line().strip(), changed));
        return Result.changed(next, PresentChoice.notice(next, position.slot(Slot.REAR_AXLE, Slot.FRONT_AXLE)));
    }

    private static Specification change(Specification before, Position position, String text) {
        return switch (position) {
            case BOTH -> before.with(Slot.REAR_AXLE, text).with(Slot.FRONT_AXLE, text);
            case REAR -> before.with(Slot.REAR_AXLE, text);
            case FRONT ->
                text.equalsIgnoreCase("none") ? before.without(Slot.FRONT_AXLE) : before.with(Slot.FRONT_AXLE, text);
        };
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        List<Offer> offers = new ArrayList<>();
        if (before.isEmpty()) {
            offers.addAll(Offer.of("front", "rear"));
        } else if (before.size() > 1 || !Position.isWord(before.get(0))) {
            return List.of();
        }
        offers.addAll(Shelves.offers(session, PartKind.AXLE));
        for (Part<AxleRatio> part : session.setup().shelf().catalog().parts(PartKind.AXLE)) {
            offers.add(new Offer(part.item().text(), part.name()));
        }
        return offers;
    }
}
