package drivetrain.repl.shell;

import drivetrain.document.CatalogDocument;
import drivetrain.repl.session.Demo;
import drivetrain.repl.session.Session;
import drivetrain.repl.session.Shelf;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** The state that the program starts with. */
final class FirstSession {

    private FirstSession() {}

    /**
     * Makes the state that the caller asked for.
     *
     * @throws drivetrain.refusal.RefusedException if the catalog is refused
     * @throws UncheckedIOException if it cannot be read
     */
    static Session of(Options options) {
        Session session = Session.on(options.catalog().map(FirstSession::shelf).orElseGet(Demo::shelf));
        session = options.units().map(session::with).orElse(session);
        return options.output().map(session::with).orElse(session);
    }

    private static Shelf shelf(String file) {
        try {
            return Shelf.of(file, CatalogDocument.read(Path.of(file)));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
