package drivetrain.repl.shell;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.refusal.RefusedException;
import drivetrain.repl.command.Interpreter;
import drivetrain.repl.command.Result;
import drivetrain.repl.session.Demo;
import drivetrain.repl.session.Session;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;

/**
 * Feeds mutated lines to the interpreter, one after the other on one session. Each gives a result, is refused, or names a file that cannot be read; nothing
 * else may happen. A refused line leaves the session as it was, which an immutable session does by itself. Lines that would write a file are left out.
 */
final class MutatedLines {

    private static final int CASES = Integer.getInteger("fuzz.cases", 1_000_000);
    private static final long SEED = Long.getLong("fuzz.seed", 1L);
    private static final int MOST_MUTATIONS = 3;
    private static final int LINES_A_SESSION = 200;
    private static final long SLOW_MILLIS = 1000;
    private static final String SIGNS = "0123456789./:-x \t'\"#,()%+=\\\0\u00B7\u2033\u202E\u001B\uD83D";
    private static final List<String> WORDS = List.of(
            "none",
            "NaN",
            "1e999",
            "-1",
            "low",
            "front",
            "rev/mile",
            "mph",
            "gal",
            "9".repeat(300),
            "' '",
            "\"",
            "gearbox");

    private final Interpreter interpreter = new Interpreter(Words.vocabulary());
    private final Random random = new Random(SEED);
    private final List<String> lines;
    private int done;
    private int refused;
    private int slow;

    MutatedLines(List<String> lines) {
        this.lines = lines;
    }

    /** A session with an order of the demo. */
    static Session demo() {
        Session nothing = Session.on(Demo.shelf());
        return new Interpreter(Words.vocabulary())
                .run(nothing, "open demo")
                .map(Result::session)
                .orElse(nothing);
    }

    /** Runs all cases; each session begins as the supplier gives it. */
    void run(String name, Supplier<Session> start) {
        Session session = start.get();
        for (int number = 0; number < CASES; number++) {
            if (number % LINES_A_SESSION == 0) {
                session = start.get();
            }
            String line = mutated(lines.get(random.nextInt(lines.size())));
            if (!writes(line)) {
                session = run(session, line, number);
            }
        }
        System.out.println(name + ": seed " + SEED + ", " + CASES + " lines, " + done + " done, " + refused
                + " refused, " + slow + " over " + SLOW_MILLIS + " ms");
        assertThat(done).as("lines done").isPositive();
        assertThat(refused).as("lines refused").isPositive();
    }

    private Session run(Session session, String line, int number) {
        long start = System.nanoTime();
        try {
            Optional<Result> result = interpreter.run(session, line);
            done++;
            return result.map(Result::session).orElse(session);
        } catch (RefusedException e) {
            refused++;
            if (e.refusal().sentence().chars().anyMatch(sign -> sign < ' ')) {
                throw new AssertionError(
                        "seed " + SEED + ", case " + number + " shows a control character: " + line, e);
            }
            return session;
        } catch (UncheckedIOException e) {
            refused++;
            return session;
        } catch (RuntimeException e) {
            throw new AssertionError("seed " + SEED + ", case " + number + ", line <<" + line + ">>", e);
        } finally {
            slow += System.nanoTime() - start > SLOW_MILLIS * 1_000_000L ? 1 : 0;
        }
    }

    /** Whether the line could be read as the command that writes a file. */
    private static boolean writes(String line) {
        String word = line.toLowerCase(Locale.ROOT);
        return word.contains("save") || word.contains("write") || word.contains("store");
    }

    private String mutated(String sample) {
        StringBuilder text = new StringBuilder(sample);
        for (int i = random.nextInt(MOST_MUTATIONS + 1); i > 0; i--) {
            mutate(text);
        }
        return text.toString().replace('\n', ' ').replace('\r', ' ');
    }

    private void mutate(StringBuilder text) {
        int at = random.nextInt(text.length() + 1);
        switch (random.nextInt(4)) {
            case 0 -> text.insert(at, SIGNS.charAt(random.nextInt(SIGNS.length())));
            case 1 -> text.insert(at, " " + WORDS.get(random.nextInt(WORDS.size())) + " ");
            case 2 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(4)));
            default -> text.append(' ').append(lines.get(random.nextInt(lines.size())));
        }
    }
}
