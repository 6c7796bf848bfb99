package drivetrain.repl.shell;

import drivetrain.refusal.RefusedException;
import drivetrain.repl.command.Completion;
import drivetrain.repl.command.Interpreter;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Vocabulary;
import drivetrain.repl.session.Session;
import drivetrain.report.text.Styler;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** The shell that somebody types at. */
final class InteractiveShell {

    /** What the list of completions would mark by color. */
    private static final List<String> COLORED = List.of(
            LineReader.COMPLETION_STYLE_DESCRIPTION,
            LineReader.COMPLETION_STYLE_LIST_DESCRIPTION,
            LineReader.COMPLETION_STYLE_STARTING,
            LineReader.COMPLETION_STYLE_LIST_STARTING,
            LineReader.COMPLETION_STYLE_GROUP,
            LineReader.COMPLETION_STYLE_LIST_GROUP);

    private final Vocabulary vocabulary;
    private final Interpreter interpreter;
    private final Console console;
    private final Options options;
    private final Worker worker = new Worker();
    private volatile Session session;

    InteractiveShell(Vocabulary vocabulary, Console console, Options options, Session start) {
        this.vocabulary = vocabulary;
        this.interpreter = new Interpreter(vocabulary);
        this.console = console;
        this.options = options;
        this.session = start;
    }

    /** Runs the shell on the terminal of this process until the user ends it. */
    int run() {
        boolean rehearsed = isRehearsed();
        Optional<HistoryFile> history = historyFile();
        try (Terminal terminal = console.isInteractive()
                ? systemTerminal()
                : builder().system(false).streams(System.in, System.out).build()) {
            return run(terminal, rehearsed ? Optional.empty() : history);
        } catch (IOException unusable) {
            throw new UncheckedIOException(unusable);
        }
    }

    private TerminalBuilder builder() {
        return TerminalBuilder.builder()
                .name("drivetrain")
                .graphemeCluster(false)
                .encoding(console.charset());
    }

    /** Asks the native library first and alone, because the other way starts a program to look at each stream. */
    private Terminal systemTerminal() throws IOException {
        TerminalKinds.know(console.environment().getOrDefault("TERM", "dumb"));
        try {
            return builder().system(true).ffm(false).exec(false).dumb(false).build();
        } catch (IOException | IllegalStateException noNativeLibrary) {
            return builder().system(true).dumb(true).build();
        }
    }

    /** Whether the launcher runs the shell, on a terminal or on its own streams, so as to archive the classes that a shell loads. */
    static boolean isRehearsed() {
        return "shell".equals(System.getProperty("drivetrain.rehearsal"));
    }

    private Optional<HistoryFile> historyFile() {
        Optional<Path> state = StateFolder.in(console.environment(), System.getProperty("user.home", ""));
        return state.map(HistoryFile::new);
    }

    /** Runs the shell on a terminal until the user ends it. */
    int run(Terminal terminal) {
        return run(terminal, historyFile());
    }

    private int run(Terminal terminal, Optional<HistoryFile> history) {
        LineReader reader = reader(terminal, new ShellHistory(history));
        Screen screen = new Screen(terminal, console.signs(), console.styler(options.color()));
        terminal.handle(Terminal.Signal.INT, signal -> worker.giveUp());
        screen.lines(Banner.lines());
        boolean isOver = false;
        while (!isOver) {
            try {
                isOver = run(reader.readLine(Prompt.of(session, console.signs())), screen);
            } catch (UserInterruptException dropped) {
                // The line is gone; the next one starts.
            } catch (EndOfFileException ended) {
                isOver = true;
            }
        }
        return ExitStatus.GOOD;
    }

    private LineReader reader(Terminal terminal, ShellHistory history) {
        LineReaderBuilder builder = LineReaderBuilder.builder()
                .terminal(terminal)
                .appName("drivetrain")
                .history(history)
                .parser((line, cursor, context) -> TypedLine.at(line, cursor))
                .completer(new WordCompleter(new Completion(vocabulary), () -> session))
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .option(LineReader.Option.INSERT_TAB, false)
                .option(LineReader.Option.CASE_INSENSITIVE, true)
                .option(LineReader.Option.HISTORY_TIMESTAMPED, false)
                .option(LineReader.Option.COMPLETE_MATCHER_TYPO, false)
                .option(LineReader.Option.COMPLETE_MATCHER_CAMELCASE, false)
                .variable(LineReader.BELL_STYLE, "none");
        if (console.styler(options.color()) == Styler.NONE) {
            COLORED.forEach(name -> builder.variable(name, "default"));
        }
        return builder.build();
    }

    /** Runs one line; returns true if it ends the shell. */
    private boolean run(String line, Screen screen) {
        try {
            Optional<Optional<Result>> done = worker.run(() -> interpreter.run(session, line));
            if (done.isEmpty()) {
                screen.lines(List.of("Given up; nothing has changed."));
                return false;
            }
            done.get().ifPresent(result -> {
                screen.show(result);
                session = result.session();
            });
            return done.get().map(Result::isLast).orElse(false);
        } catch (RefusedException refused) {
            screen.lines(Complaint.underlined(refused.refusal(), line, screen.width()));
        } catch (UncheckedIOException unusable) {
            screen.lines(Complaint.plain(FileTrouble.of(unusable)));
        } catch (RuntimeException fault) {
            screen.lines(List.of(Messages.FAULT));
            if (options.debug()) {
                screen.lines(Messages.trace(fault).lines().toList());
            }
        }
        return false;
    }
}
