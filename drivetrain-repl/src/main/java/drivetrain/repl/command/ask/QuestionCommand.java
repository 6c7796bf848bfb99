package drivetrain.repl.command.ask;

import drivetrain.assessment.Answer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Line;
import drivetrain.repl.command.Result;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;

/**
 * A command whose answer can be explained.
 *
 * @param <A> the type of the answer
 */
public interface QuestionCommand<A extends Answer> extends Command {

    /**
     * Asks.
     *
     * @param session the present state
     * @param arguments the words behind the command
     * @return the answer, or what is missing
     * @throws drivetrain.refusal.RefusedException if the words cannot be used
     */
    Outcome<A> ask(Session session, Arguments arguments);

    /**
     * Words the answer.
     *
     * @param answer the answer
     * @param units the units of its sentences
     * @return the report
     */
    Report report(A answer, UnitSystem units);

    @Override
    default Result run(Session session, Arguments arguments) {
        return Result.answer(session, report(answer(session, arguments), session.units()));
    }

    /**
     * Asks for an answer that must be there.
     *
     * @param session the present state
     * @param arguments the words behind the command
     * @return the answer
     * @throws drivetrain.refusal.RefusedException if the words cannot be used or something is missing, which the refusal names
     */
    default A answer(Session session, Arguments arguments) {
        Outcome<A> outcome = ask(session, arguments);
        return outcome.value()
                .orElseThrow(() -> Refusal.of(
                                manual().word(),
                                "",
                                "not evaluated because " + outcome.reason().orElse("something is missing"))
                        .in(Line.place(0))
                        .asException());
    }
}
