package drivetrain.repl.command.keep;

import drivetrain.document.OrderDocument;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** {@code save}: the choices to a file that {@code open} reads back. */
public final class SaveCommand implements Command {

    private static final Manual MANUAL = Manual.of(
                    Topic.KEEP, "save FILE", "write the choices to an order file, .yaml or .json")
            .alias("write")
            .example("save coast-tourer.yaml");

    /** Makes the command. */
    public SaveCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        if (arguments.isEmpty()) {
            throw arguments
                    .refuse(0, "no file is named to save to")
                    .allowing("a file name that ends in .yaml or .json")
                    .asException();
        }
        arguments.requireAtMost(1, MANUAL.usage());
        Path file = arguments.read(FileWords::path);
        arguments.read(text -> {
            try {
                OrderDocument.write(file, session.specification());
            } catch (IOException unwritable) {
                throw new UncheckedIOException(unwritable);
            }
            return file;
        });
        return Result.changed(session.saved(), "Saved to " + file + ".");
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return before.isEmpty() ? FileWords.offers() : List.of();
    }
}
