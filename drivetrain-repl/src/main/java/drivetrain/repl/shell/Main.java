package drivetrain.repl.shell;

import drivetrain.refusal.RefusedException;
import drivetrain.repl.command.Interpreter;
import drivetrain.repl.command.Vocabulary;
import drivetrain.repl.session.Session;
import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The program {@code drivetrain}. */
public final class Main {

    private final Console console;
    private final InputStream in;
    private final PrintStream out;
    private final PrintStream err;

    private Main(Console console, InputStream in, PrintStream out, PrintStream err) {
        this.console = console;
        this.in = in;
        this.out = out;
        this.err = err;
    }

    /**
     * Runs the program and ends the process with its exit status.
     *
     * @param args the words that it was called with
     */
    public static void main(String[] args) {
        Console console = Console.ofProcess();
        PrintStream out = console.stream(new FileOutputStream(FileDescriptor.out));
        PrintStream err = console.stream(new FileOutputStream(FileDescriptor.err));
        int status = new Main(console, new FileInputStream(FileDescriptor.in), out, err).run(args);
        out.flush();
        err.flush();
        System.exit(status);
    }

    /**
     * Runs the program without a terminal.
     *
     * @param args the words that it was called with
     * @param in the lines to run where no others are given
     * @param out where the answers go, in ASCII
     * @param err where everything else goes, in ASCII
     * @return the exit status: 0 good, 1 an input was refused or an answer could not be worked out, 2 called wrongly, 3 a file could not be read
     *     or written
     */
    public static int run(String[] args, InputStream in, PrintStream out, PrintStream err) {
        return new Main(Console.NONE, in, out, err).run(args);
    }

    private int run(String[] args) {
        Options options;
        try {
            options = OptionReader.read(args);
        } catch (RefusedException refused) {
            new Messages(err, console.signs(), false).plain(refused.refusal());
            err.print("  \"drivetrain --help\" lists the options\n");
            err.flush();
            return ExitStatus.USAGE;
        }
        return switch (options.request()) {
            case HELP -> print(Manuals.usage());
            case VERSION -> print("drivetrain " + Manuals.version() + "\n");
            case RUN -> run(options);
        };
    }

    private int print(String text) {
        out.print(text);
        return out.checkError() ? ExitStatus.FILE : ExitStatus.GOOD;
    }

    private int run(Options options) {
        Messages messages = new Messages(err, console.signs(), options.debug());
        try {
            Session session = FirstSession.of(options);
            Vocabulary vocabulary = Words.vocabulary(messages::progress);
            if (options.readsInput() && (console.isInteractive() || InteractiveShell.isRehearsed())) {
                return new InteractiveShell(vocabulary, console, options, session).run();
            }
            Paper paper = console.paper(options.color());
            return new Batch(new Interpreter(vocabulary), session, paper, out, messages, options.keepsGoing())
                    .run(lines(options));
        } catch (RefusedException refused) {
            messages.plain(refused.refusal());
            return ExitStatus.REFUSED;
        } catch (UncheckedIOException unusable) {
            messages.plain(FileTrouble.of(unusable));
            return ExitStatus.FILE;
        }
    }

    private Lines lines(Options options) {
        if (!options.lines().isEmpty()) {
            return Lines.of("-c", options.lines());
        }
        return options.script()
                .map(script -> Lines.of(script, reader(open(script))))
                .orElseGet(() -> Lines.of("<stdin>", reader(in)));
    }

    private static InputStream open(String script) {
        try {
            return Files.newInputStream(Path.of(script));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static BufferedReader reader(InputStream bytes) {
        return new BufferedReader(new InputStreamReader(
                bytes, StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)));
    }
}
