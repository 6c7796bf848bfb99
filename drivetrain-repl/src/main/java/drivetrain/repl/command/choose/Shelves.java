package drivetrain.repl.command.choose;

import drivetrain.combination.Part;
import drivetrain.combination.PartKind;
import drivetrain.repl.command.Offer;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;

/** The parts on the shelf as words that can be typed. */
final class Shelves {

    private Shelves() {}

    /** Offers every part of a kind by its name. */
    static List<Offer> offers(Session session, PartKind<?> kind) {
        List<Offer> offers = new ArrayList<>();
        for (Part<?> part : session.setup().shelf().catalog().parts(kind)) {
            offers.add(new Offer(part.name(), part.description()));
        }
        return offers;
    }
}
