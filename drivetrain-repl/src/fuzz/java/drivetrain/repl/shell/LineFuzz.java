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
import org.junit.jupiter.api.Test;

/**
 * Feeds mutated lines to the interpreter, one after the other on one session. Each gives a result, is refused, or names a file that cannot be read; nothing
 * else may happen. A refused line leaves the session as it was, which an immutable session does by itself. Lines that would write a file are left out.
 */
class LineFuzz {

    private static final int CASES = Integer.getInteger("fuzz.cases", 1_000_000);
    private static final long SEED = Long.getLong("fuzz.seed", 1L);
    private static final int MOST_MUTATIONS = 3;
    private static final int LINES_A_SESSION = 200;
    private static final String SIGNS = "0123456789./:-x \t'\"#,()%+=\\\0\u00B7\u2033\u202E\u001B\uD83D";
    private static final List<String> LINES = List.of(
            "engine v8-6.2",
            "engine 420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, idle 650 rpm, max 6600 rpm",
            "transmission auto-6-hd",
            "transmission 4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06",
            "transfer 1.00 2.72",
            "axle 41/11",
            "axle front 4.11",
            "tire 285/75R16 rollout 2510 mm",
            "tire front mud-35-r17",
            "vehicle wagon-long",
            "overdrive 0.78",
            "hubs 24/16",
            "cruise 65 mph in 4 low",
            "speeds 3000 rpm",
            "crawl",
            "torque",
            "shifts 5500 rpm",
            "speedometer",
            "check",
            "show",
            "explain cruise",
            "plot speeds low",
            "parts tire 285",
            "title A 'quoted' name",
            "open demo ranch-crawler",
            "units both",
            "output table",
            "undo",
            "redo",
            "help cruise",
            "tour");
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
    private int done;
    private int refused;

    @Test
    void answersOrRefusesWhateverIsTyped() {
        Session session = Session.on(Demo.shelf());
        for (int number = 0; number < CASES; number++) {
            if (number % LINES_A_SESSION == 0) {
                session = Session.on(Demo.shelf());
            }
            String line = mutated(LINES.get(random.nextInt(LINES.size())));
            if (!writes(line)) {
                session = run(session, line, number);
            }
        }
        System.out.println(
                "line fuzz: seed " + SEED + ", " + CASES + " lines, " + done + " done, " + refused + " refused");
        assertThat(done).as("lines done").isPositive();
        assertThat(refused).as("lines refused").isPositive();
    }

    private Session run(Session session, String line, int number) {
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
            default -> text.append(' ').append(LINES.get(random.nextInt(LINES.size())));
        }
    }
}
