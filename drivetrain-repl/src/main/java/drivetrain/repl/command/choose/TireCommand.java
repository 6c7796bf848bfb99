package drivetrain.repl.command.choose;

import drivetrain.combination.PartKind;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;

/** {@code tire}: the tires of all wheels, or of one axle. */
public final class TireCommand implements AxleChoice {

    private static final Manual MANUAL = Manual.of(
                    Topic.CHOOSE,
                    "tire [front|rear] [PART|SIZE [rollout LENGTH | revs N/mile | diameter LENGTH]]",
                    "choose the tires of all wheels or of one axle, by name or by size")
            .alias("tires", "tyre", "tyres", "wheel", "wheels")
            .example(
                    "tire 285/75R16 122/119Q",
                    "tire 285/75R16 rollout 2510 mm",
                    "tire 285/75R16 revs 632 rev/mile",
                    "tire 7.50-16 diameter 31.7 in");

    /** Makes the command. */
    public TireCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Slot rear() {
        return Slot.TIRE;
    }

    @Override
    public Slot front() {
        return Slot.FRONT_TIRE;
    }

    @Override
    public Specification change(Specification before, Position position, String text) {
        return switch (position) {
            case BOTH -> before.with(Slot.TIRE, text).without(Slot.FRONT_TIRE);
            case REAR -> keepFront(before).with(Slot.TIRE, text);
            case FRONT -> before.with(Slot.FRONT_TIRE, text);
        };
    }

    /** The front tires stay what they are when the rear ones alone change. */
    private static Specification keepFront(Specification before) {
        return before.choice(Slot.FRONT_TIRE)
                .or(() -> before.choice(Slot.TIRE))
                .map(present -> before.with(Slot.FRONT_TIRE, present))
                .orElse(before);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        List<Offer> offers = new ArrayList<>();
        if (before.isEmpty()) {
            offers.addAll(Offer.of("front", "rear"));
        } else if (before.size() > 1 || !Position.isWord(before.get(0))) {
            return Offer.of("rollout", "revs", "diameter");
        }
        offers.addAll(Shelves.offers(session, PartKind.TIRE));
        return offers;
    }
}
