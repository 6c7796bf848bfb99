package drivetrain.repl.command;

import drivetrain.repl.session.Session;
import java.util.Optional;

/** Runs lines of the language. */
public final class Interpreter {

    private final Vocabulary vocabulary;

    /**
     * Makes an interpreter.
     *
     * @param vocabulary the commands
     */
    public Interpreter(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /**
     * Runs one line.
     *
     * @param session the present state
     * @param text the line without its line end
     * @return the result, or empty if the line holds nothing to run
     * @throws drivetrain.refusal.RefusedException if the line cannot be used; the present state then stands
     */
    public Optional<Result> run(Session session, String text) {
        Line line = Line.parse(text);
        if (line.isEmpty()) {
            return Optional.empty();
        }
        Vocabulary.Called called = vocabulary.find(line);
        return Optional.of(called.command().run(session, called.arguments()));
    }
}
