package drivetrain.repl.command.choose;

import drivetrain.combination.PartKind;
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

/** A word that chooses the part of one slot: {@code engine}, {@code transmission}, {@code transfer}, {@code overdrive}, {@code hubs}, {@code vehicle}. */
public final class PartCommand implements Command {

    private final Manual manual;
    private final Slot slot;
    private final boolean canBeLeftOut;

    private PartCommand(Slot slot, boolean canBeLeftOut, Manual manual) {
        this.manual = manual;
        this.slot = slot;
        this.canBeLeftOut = canBeLeftOut;
    }

    /**
     * Lists the commands of this kind.
     *
     * @return the commands in the order from vehicle to hubs
     */
    public static List<Command> all() {
        return List.of(
                new PartCommand(
                        Slot.VEHICLE,
                        false,
                        Manual.of(Topic.CHOOSE, "vehicle [PART]", "choose the vehicle, by name or by its masses")
                                .alias("truck", "car")
                                .example("vehicle mass 2150 kg front 1250 kg rear 1700 kg")),
                new PartCommand(
                        Slot.ENGINE,
                        false,
                        Manual.of(Topic.CHOOSE, "engine [PART]", "choose the engine, by name or by its peak figures")
                                .alias("motor")
                                .example(
                                        "engine 420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, idle 650 rpm, max 6600 rpm")),
                new PartCommand(
                        Slot.TRANSMISSION,
                        false,
                        Manual.of(
                                        Topic.CHOOSE,
                                        "transmission [PART]",
                                        "choose the transmission, by name or by its ratios")
                                .alias("gearbox", "trans", "gear box")
                                .example(
                                        "transmission 4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06",
                                        "transmission 4.03 2.36 1.53 1.15 0.85 0.67 converter lockup")),
                new PartCommand(
                        Slot.OVERDRIVE,
                        true,
                        Manual.of(
                                        Topic.CHOOSE,
                                        "overdrive [PART|none]",
                                        "choose an auxiliary over- or underdrive behind the transmission")
                                .alias("underdrive", "od")
                                .example("overdrive 0.78", "overdrive none")),
                new PartCommand(
                        Slot.TRANSFER,
                        true,
                        Manual.of(
                                        Topic.CHOOSE,
                                        "transfer [PART|none]",
                                        "choose the transfer case, by name or by its high and low ratio")
                                .alias("transfer case", "transfer box", "xfer")
                                .example("transfer 1.00 2.72", "transfer 1.00 2.72 part-time")),
                new PartCommand(
                        Slot.HUBS,
                        true,
                        Manual.of(Topic.CHOOSE, "hubs [PART|none]", "choose a reduction in the wheel hubs")
                                .alias("hub", "portal", "portals")
                                .example("hubs 24/16", "hubs none")));
    }

    /** Makes the command of one slot. */
    static Command of(Slot slot, boolean canBeLeftOut, Manual manual) {
        return new PartCommand(slot, canBeLeftOut, manual);
    }

    @Override
    public Manual manual() {
        return manual;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        if (arguments.isEmpty()) {
            return Result.answer(session, PresentChoice.of(session, List.of(slot)));
        }
        String text = arguments.text();
        Specification changed = isLeftOut(text)
                ? session.specification().without(slot)
                : session.specification().with(slot, text);
        Session next = arguments.read(typed -> session.change(arguments.line().strip(), changed));
        return Result.changed(next, PresentChoice.notice(next, slot));
    }

    /** A piece of a fuel supply that is not fitted has no text of its own. */
    private boolean isLeftOut(String text) {
        return canBeLeftOut && slot.isFuelSupply() && text.equalsIgnoreCase("none");
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (!before.isEmpty()) {
            return slot.isFuelSupply() ? FuelOffers.of(session, slot, before) : List.of();
        }
        PartKind<?> kind = slot.kind();
        List<Offer> offers = new ArrayList<>(Shelves.offers(session, kind));
        if (canBeLeftOut) {
            offers.add(new Offer("none", "none is fitted"));
        }
        return offers;
    }
}
