package drivetrain.repl.shell;

import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.report.text.Signs;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/** Everything that is not an answer: refusals and faults, on the stream for errors. */
final class Messages {

    private final PrintStream err;
    private final Signs signs;
    private final boolean debug;

    Messages(PrintStream err, Signs signs, boolean debug) {
        this.err = err;
        this.signs = signs;
        this.debug = debug;
    }

    /** Reports a refused line. */
    void refused(Refusal refusal, String source, int line) {
        print(Complaint.located(refusal, source, line));
    }

    /** Reports a refusal that belongs to no line. */
    void plain(Refusal refusal) {
        print(Complaint.plain(refusal));
    }

    /** Reports a fault of the program itself. */
    void fault(Throwable fault, String source, int line) {
        print(List.of(new Place(source, line, 1) + ": " + FAULT));
        if (debug) {
            err.print(trace(fault));
        }
        err.flush();
    }

    /** Says how far a long calculation is. */
    void progress(String line) {
        print(List.of(line));
    }

    /** What is said about a fault of the program. */
    static final String FAULT = "this line cannot be answered because of a fault in the program; --debug shows where";

    /** Writes the trace of a fault. */
    static String trace(Throwable fault) {
        StringWriter text = new StringWriter();
        fault.printStackTrace(new PrintWriter(text, true));
        return text.toString();
    }

    private void print(List<String> lines) {
        for (String line : lines) {
            err.print(signs.text(line) + "\n");
        }
        err.flush();
    }
}
