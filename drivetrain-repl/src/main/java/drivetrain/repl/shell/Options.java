package drivetrain.repl.shell;

import drivetrain.quantity.UnitSystem;
import drivetrain.repl.session.OutputForm;
import java.util.List;
import java.util.Optional;

/**
 * What the caller of the program asked for.
 *
 * @param request what to do before all else
 * @param lines the lines given with {@code -c}, in order
 * @param script the file given with {@code --file}
 * @param catalog the file given with {@code --catalog}
 * @param output the form of the answers, where one was given
 * @param units the units, where they were given
 * @param keepsGoing true if a refused line does not end a script
 * @param color false if color is never wanted
 * @param debug true if a fault of the program is to be shown with its trace
 */
record Options(
        Request request,
        List<String> lines,
        Optional<String> script,
        Optional<String> catalog,
        Optional<OutputForm> output,
        Optional<UnitSystem> units,
        boolean keepsGoing,
        boolean color,
        boolean debug) {

    /** What the program is to do. */
    enum Request {
        /** Run lines. */
        RUN,
        /** Show how the program is called. */
        HELP,
        /** Show the version. */
        VERSION
    }

    Options {
        lines = List.copyOf(lines);
    }

    /** Tells whether the lines come from the program's input. */
    boolean readsInput() {
        return lines.isEmpty() && script.isEmpty();
    }
}
