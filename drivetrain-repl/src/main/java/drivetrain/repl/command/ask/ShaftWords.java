package drivetrain.repl.command.ask;

import drivetrain.driveshaft.ShaftPlace;
import drivetrain.repl.command.Arguments;
import java.util.Optional;

/** The words by which one of the two driveshafts is meant. */
final class ShaftWords {

    private ShaftWords() {}

    /** Reads which shaft is meant; empty if none is named. */
    static Optional<ShaftPlace> read(Arguments arguments, String usage) {
        arguments.requireAtMost(1, usage);
        if (arguments.isEmpty()) {
            return Optional.empty();
        }
        if (arguments.get(0).isAny("front")) {
            return Optional.of(ShaftPlace.FRONT);
        }
        if (arguments.get(0).isAny("rear")) {
            return Optional.of(ShaftPlace.REAR);
        }
        throw arguments
                .refuse(0, "is not one of the two shafts")
                .allowing("front or rear")
                .asException();
    }
}
