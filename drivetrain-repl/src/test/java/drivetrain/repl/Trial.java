package drivetrain.repl;

import drivetrain.repl.shell.Main;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * One run of the program in this process.
 *
 * @param status the exit status
 * @param out what it answered
 * @param err everything else that it said
 */
public record Trial(int status, String out, String err) {

    /** Runs lines as if each were given with {@code -c}. */
    public static Trial of(String... lines) {
        List<String> args = new ArrayList<>();
        for (String line : lines) {
            args.add("-c");
            args.add(line);
        }
        return called(args.toArray(String[]::new));
    }

    /** Calls the program with words. */
    public static Trial called(String... args) {
        return piped("", args);
    }

    /** Pipes text into the program. */
    public static Trial piped(String input, String... args) {
        return piped(input.getBytes(StandardCharsets.UTF_8), args);
    }

    /** Pipes bytes into the program. */
    public static Trial piped(byte[] input, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Main.run(
                args,
                new ByteArrayInputStream(input),
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8));
        return new Trial(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
