package drivetrain.repl.command.ask;

import drivetrain.assessment.Answer;
import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.AngularSpeed;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Offer;
import drivetrain.repl.session.Session;
import java.util.List;

/**
 * A question that is asked at an engine speed, or at the engine's maximum speed where none is named.
 *
 * @param <A> the type of the answer
 */
interface EngineSpeedQuestion<A extends Answer> extends QuestionCommand<A> {

    /** The greatest engine speed that can be asked about. */
    AngularSpeed MOST = AngularSpeed.ofRpm(30_000.0);

    /** Asks at the engine's maximum speed. */
    Outcome<A> atMaximum(Combination combination);

    /** Asks at an engine speed. */
    Outcome<A> at(Combination combination, AngularSpeed engineSpeed);

    @Override
    default Outcome<A> ask(Session session, Arguments arguments) {
        if (arguments.isEmpty()) {
            return atMaximum(session.combination());
        }
        AngularSpeed engineSpeed = AskedQuantity.read(AngularSpeed.KIND, MOST, arguments, "rpm");
        return arguments.read(text -> at(session.combination(), engineSpeed));
    }

    @Override
    default List<Offer> offers(Session session, List<String> before) {
        return before.size() == 1 ? Offer.of("rpm") : List.of();
    }
}
