package drivetrain.repl.command.choose;

import drivetrain.combination.Part;
import drivetrain.combination.PartKind;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.gearing.AxleRatio;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;

/** {@code axle}: the ring and pinion of both axles, or of one. */
public final class AxleCommand implements AxleChoice {

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
    public Slot rear() {
        return Slot.REAR_AXLE;
    }

    @Override
    public Slot front() {
        return Slot.FRONT_AXLE;
    }

    @Override
    public Specification change(Specification before, Position position, String text) {
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
