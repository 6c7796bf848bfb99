package drivetrain.repl.command.ask;

import drivetrain.combination.Part;
import drivetrain.repl.command.Offer;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;

/** The gears of the chosen transmission as words that can be typed. */
final class GearOffers {

    private GearOffers() {}

    static List<Offer> of(Session session) {
        int gears = session.combination()
                .transmission()
                .map(Part::item)
                .map(transmission -> transmission.forward().size())
                .orElse(0);
        List<Offer> offers = new ArrayList<>();
        for (int gear = 1; gear <= gears; gear++) {
            offers.add(new Offer(Integer.toString(gear), "gear"));
        }
        offers.add(new Offer("top", "the highest gear"));
        return offers;
    }
}
