package drivetrain.repl.command.keep;

import drivetrain.document.OrderFile;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.repl.session.Setup;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** {@code save}: the choices to a file that {@code open} reads back. */
public final class SaveCommand implements Command {

    private static final Manual MANUAL = Manual.of(
                    Topic.KEEP, "save FILE", "write the choices and the kept packages to an order file, .yaml or .json")
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
                new OrderFile(session.specification(), session.setup().asideChoices()).write(file);
            } catch (IOException unwritable) {
                throw new UncheckedIOException(unwritable);
            }
            return file;
        });
        return Result.changed(session.saved(), "Saved to " + file + kept(session.setup()) + ".");
    }

    /** The packages that went with the choices, and what they need that the file does not name. */
    private static String kept(Setup setup) {
        int count = setup.aside().size();
        if (count == 0) {
            return "";
        }
        List<String> elsewhere = setup.aside().entrySet().stream()
                .filter(one ->
                        !one.getValue().shelf().name().equals(setup.shelf().name()))
                .map(one -> one.getKey() + " from the shelf "
                        + one.getValue().shelf().name())
                .toList();
        String with = ", with " + (count == 1 ? "the kept package" : count + " kept packages");
        return elsewhere.isEmpty()
                ? with
                : with + "; a file names no shelf, and these are of another one than the work in hand: "
                        + String.join(", ", elsewhere);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return before.isEmpty() ? FileWords.offers() : List.of();
    }
}
