package drivetrain.repl.session;

import drivetrain.combination.Specification;
import drivetrain.document.CatalogDocument;
import drivetrain.document.OrderDocument;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** The shelf and the orders that come with the program: an invented shop with invented parts. */
public final class Demo {

    /** The word by which the demo is opened. */
    public static final String WORD = "demo";

    private static final String FOLDER = "drivetrain/demo";
    private static final List<String> DOCUMENTS = List.of(
            "vehicles.yaml",
            "engines.yaml",
            "transmissions.yaml",
            "transfer-cases.yaml",
            "axles.yaml",
            "tires.yaml",
            "driveshafts.yaml",
            "fuel.yaml");
    private static final List<String> ORDERS = List.of("coast-tourer", "ranch-crawler", "valley-hauler");

    private Demo() {}

    static List<String> documents() {
        return DOCUMENTS;
    }

    /**
     * Returns the shelf, which is read when a name first needs it.
     *
     * @return a shelf of its own at each call
     */
    public static Shelf shelf() {
        return Shelf.lazy(WORD, () -> {
            try {
                return CatalogDocument.readPacked(FOLDER, DOCUMENTS);
            } catch (IOException incomplete) {
                throw new UncheckedIOException(incomplete);
            }
        });
    }

    /**
     * Returns the names of the orders.
     *
     * @return the names, the one that is opened without a name first
     */
    public static List<String> orders() {
        return ORDERS;
    }

    /**
     * Reads an order.
     *
     * @param name its name
     * @return the choices
     * @throws drivetrain.refusal.RefusedException if there is no such order
     */
    public static Specification order(String name) {
        if (!ORDERS.contains(name)) {
            throw Refusal.of("demo order", name, "is not among the orders of the demo")
                    .allowing(String.join(", ", ORDERS))
                    .suggesting(NearNames.of(name, ORDERS))
                    .asException();
        }
        try {
            return OrderDocument.readPacked(FOLDER + "/orders/" + name + ".yaml");
        } catch (IOException incomplete) {
            throw new UncheckedIOException(incomplete);
        }
    }
}
