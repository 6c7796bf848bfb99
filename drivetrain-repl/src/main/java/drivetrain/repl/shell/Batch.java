package drivetrain.repl.shell;

import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import drivetrain.repl.command.Interpreter;
import drivetrain.repl.command.Result;
import drivetrain.repl.session.OutputForm;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** One run of lines without a terminal: answers go to one stream, everything else to another. */
final class Batch {

    private final Interpreter interpreter;
    private final Paper paper;
    private final PrintStream out;
    private final Messages messages;
    private final boolean keepsGoing;

    private Session session;
    private int status = ExitStatus.GOOD;
    private boolean hasAnswered;
    private boolean isOver;

    Batch(Interpreter interpreter, Session start, Paper paper, PrintStream out, Messages messages, boolean keepsGoing) {
        this.interpreter = interpreter;
        this.session = start;
        this.paper = paper;
        this.out = out;
        this.messages = messages;
        this.keepsGoing = keepsGoing;
    }

    /**
     * Runs lines until they end, one of them fails or one of them ends the shell.
     *
     * @return the exit status, which is that of the first line that failed
     */
    int run(Lines lines) {
        try {
            Optional<Lines.Numbered> line = lines.next();
            while (line.isPresent()) {
                run(line.get(), lines.source());
                line = isOver ? Optional.empty() : lines.next();
            }
        } catch (IOException unreadable) {
            messages.plain(FileTrouble.of(lines.source(), unreadable));
            fail(ExitStatus.FILE);
        }
        return status;
    }

    private void run(Lines.Numbered line, String source) {
        try {
            interpreter.run(session, line.text()).ifPresent(this::accept);
        } catch (RefusedException refused) {
            messages.refused(refused.refusal(), source, line.number());
            fail(ExitStatus.REFUSED);
        } catch (UncheckedIOException unusable) {
            messages.refused(FileTrouble.of(unusable), source, line.number());
            fail(ExitStatus.FILE);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            messages.fault(fault, source, line.number());
            fail(ExitStatus.REFUSED);
        }
    }

    private void accept(Result result) {
        Session next = result.session();
        result.answer().ifPresent(answer -> write(answer, next));
        session = next;
        isOver = result.isLast();
        if (out.checkError()) {
            messages.plain(Refusal.of("output", "", "the answer cannot be written"));
            fail(ExitStatus.FILE);
            isOver = true;
        }
    }

    /** Writes an answer; where people read, an empty line stands between it and the one before. */
    private void write(Report answer, Session next) {
        boolean machine = next.output() == OutputForm.JSON || next.output() == OutputForm.CSV;
        if (hasAnswered && !machine) {
            out.print("\n");
        }
        out.print(AnswerText.of(answer, next.output(), paper.page(next.units())));
        hasAnswered = true;
    }

    private void fail(int failure) {
        status = status == ExitStatus.GOOD ? failure : status;
        isOver = isOver || !keepsGoing;
    }
}
