package drivetrain.repl.command.choose;

import drivetrain.combination.Slot;
import drivetrain.repl.command.Arguments;
import java.util.List;

/** Which axle a choice is for. */
enum Position {
    /** Both axles. */
    BOTH,
    /** The rear axle alone. */
    REAR,
    /** The front axle alone. */
    FRONT;

    static Position of(Arguments arguments) {
        return arguments
                .first()
                .map(word -> word.isAny("front") ? FRONT : word.isAny("rear") ? REAR : BOTH)
                .orElse(BOTH);
    }

    static boolean isWord(String word) {
        return word.equalsIgnoreCase("front") || word.equalsIgnoreCase("rear");
    }

    Arguments rest(Arguments arguments) {
        return this == BOTH ? arguments : arguments.from(1);
    }

    Slot slot(Slot rear, Slot front) {
        return this == FRONT ? front : rear;
    }

    List<Slot> slots(Slot rear, Slot front) {
        return this == BOTH ? List.of(rear, front) : List.of(slot(rear, front));
    }
}
