package drivetrain.repl.command.keep;

import drivetrain.combination.Specification;
import drivetrain.document.CatalogDocument;
import drivetrain.document.OrderFile;
import drivetrain.refusal.RefusedException;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Demo;
import drivetrain.repl.session.Kept;
import drivetrain.repl.session.Session;
import drivetrain.repl.session.Setup;
import drivetrain.repl.session.Shelf;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** {@code open}: an order from a file, or one of the demo. */
public final class OpenCommand implements Command {

    /** What the document says that is a catalog and not an order. */
    private static final String CATALOG = "drivetrain-catalog";

    private static final Manual MANUAL = Manual.of(
                    Topic.KEEP,
                    "open FILE|demo [ORDER]",
                    "take up an order or a catalog from a file, or an order of the demo")
            .alias("load")
            .example("open demo", "open demo ranch-crawler", "open coast-tourer.yaml", "open shop-catalog.yaml");

    /** Makes the command. */
    public OpenCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        if (arguments.isEmpty()) {
            throw arguments
                    .refuse(0, "no order is named to be opened")
                    .allowing("a file name that ends in .yaml or .json, or demo")
                    .asException();
        }
        boolean demo = arguments.get(0).isAny(Demo.WORD);
        arguments.requireAtMost(demo ? 2 : 1, MANUAL.usage());
        Session next = demo
                ? session.openPacked(arguments.line().strip(), demo(session.setup(), arguments.from(1)))
                : arguments.read(text -> session.open(arguments.line().strip(), file(session.setup(), text)));
        return Result.changed(
                next,
                "Opened: " + next.title().orElse("an order without a title") + replaced(session.setup(), next.setup())
                        + ".");
    }

    /** Names the kept packages that are others now. */
    private static String replaced(Setup before, Setup after) {
        Map<String, Specification> now = after.asideChoices();
        List<String> others = before.asideChoices().entrySet().stream()
                .filter(one -> !now.entrySet().contains(one))
                .map(Map.Entry::getKey)
                .toList();
        return others.isEmpty() ? "" : "; of the kept packages its own replace " + String.join(", ", others);
    }

    private static Setup demo(Setup present, Arguments name) {
        Specification order = name.isEmpty() ? Demo.order(Demo.orders().get(0)) : name.read(Demo::order);
        Shelf shelf = Demo.shelf();
        shelf.catalog(); // the orders of the demo name its parts
        return present.with(order).on(shelf);
    }

    private static Setup file(Setup present, String text) {
        Path file = FileWords.path(text);
        try {
            try {
                OrderFile opened = OrderFile.read(file, choice -> lookUp(choice, present.shelf()));
                return present.with(opened.order()).keeping(opened.kept());
            } catch (RefusedException refused) {
                if (!refused.refusal().given().equals(CATALOG)) {
                    throw refused;
                }
                return present.on(Shelf.of(text, CatalogDocument.read(file)));
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** One choice that cannot be looked up, be it of a kept package, has the whole file refused. */
    private static void lookUp(Specification choice, Shelf shelf) {
        new Kept(choice, shelf).combination().lookUpUnlike(Specification.empty());
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (before.isEmpty()) {
            List<Offer> offers = new ArrayList<>();
            offers.add(new Offer(Demo.WORD, "an order of the demo"));
            offers.addAll(FileWords.offers());
            return offers;
        }
        boolean demo = before.size() == 1 && before.get(0).equalsIgnoreCase(Demo.WORD);
        return demo ? Offer.of(Demo.orders().toArray(String[]::new)) : List.of();
    }
}
