package drivetrain.repl.command;

import drivetrain.repl.session.Session;
import java.util.List;

/** One command of the language. It knows no terminal and keeps no state. */
public interface Command {

    /**
     * Returns what the command says about itself.
     *
     * @return the manual
     */
    Manual manual();

    /**
     * Runs the command.
     *
     * @param session the present state
     * @param arguments the words behind the command
     * @return the answer and the next state
     * @throws drivetrain.refusal.RefusedException if the words cannot be used; the present state then stands
     */
    Result run(Session session, Arguments arguments);

    /**
     * Offers the words that can stand behind those that are there.
     *
     * @param session the present state
     * @param before the words behind the command, up to the place that is asked about
     * @return the offers in the order in which they are to be shown; empty where the user must know
     */
    default List<Offer> offers(Session session, List<String> before) {
        return List.of();
    }
}
