package drivetrain.repl.command.choose;

import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Result;
import drivetrain.repl.session.Session;

/** A choice that is made for both axles, or for the front or the rear one alone. */
interface AxleChoice extends Command {

    /** Names the slot at the rear axle. */
    Slot rear();

    /** Names the slot at the front axle. */
    Slot front();

    /** Makes the choice. */
    Specification change(Specification before, Position position, String text);

    @Override
    default Result run(Session session, Arguments arguments) {
        Position position = Position.of(arguments);
        Arguments part = position.rest(arguments);
        if (part.isEmpty()) {
            return Result.answer(session, PresentChoice.of(session, position.slots(rear(), front())));
        }
        Specification changed = change(session.specification(), position, part.text());
        Session next = part.read(text -> session.change(arguments.line().strip(), changed));
        return Result.changed(next, PresentChoice.notice(next, position.slot(rear(), front())));
    }
}
