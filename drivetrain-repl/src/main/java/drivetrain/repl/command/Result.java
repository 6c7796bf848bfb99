package drivetrain.repl.command;

import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import java.util.Optional;

/**
 * What a command gives back.
 *
 * @param session the next state
 * @param answer the answer, for every reader
 * @param notice what was done, for somebody at a terminal; may be empty
 * @param isLast true if the shell is to end
 */
public record Result(Session session, Optional<Report> answer, String notice, boolean isLast) {

    /**
     * Answers a question and changes nothing.
     *
     * @param session the present state
     * @param answer the answer
     * @return the result
     */
    public static Result answer(Session session, Report answer) {
        return new Result(session, Optional.of(answer), "", false);
    }

    /**
     * Changes the state.
     *
     * @param next the next state
     * @param notice what was done
     * @return the result
     */
    public static Result changed(Session next, String notice) {
        return new Result(next, Optional.empty(), notice, false);
    }

    /**
     * Ends the shell.
     *
     * @param session the present state
     * @return the result
     */
    public static Result last(Session session) {
        return new Result(session, Optional.empty(), "", true);
    }
}
