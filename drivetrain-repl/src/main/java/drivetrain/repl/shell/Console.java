package drivetrain.repl.shell;

import drivetrain.report.text.Signs;
import drivetrain.report.text.Styler;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the program's streams are connected to.
 *
 * @param isInteractive true if somebody types at the input and reads the output
 * @param showsOutput true if the output is a screen
 * @param charset the charset of the screen; UTF-8 for a file or a pipe
 * @param environment the environment
 */
record Console(boolean isInteractive, boolean showsOutput, Charset charset, Map<String, String> environment) {

    private static final int MOST_COLUMNS = 1000;

    /** No screen at all. */
    static final Console NONE = new Console(false, false, StandardCharsets.UTF_8, Map.of());

    Console {
        environment = Map.copyOf(environment);
    }

    /** Looks at the streams of this process. */
    static Console ofProcess() {
        boolean interactive = isTerminal(System.console());
        // Until Java 18 this property is set exactly where the output is a terminal; later its place is taken by one
        // that is always set.
        boolean shown = interactive || System.getProperty("sun.stdout.encoding") != null;
        Charset screen = known(System.getProperty("stdout.encoding"))
                .or(() -> known(System.getProperty("sun.stdout.encoding")))
                .or(() -> known(System.getProperty("native.encoding")))
                .orElse(StandardCharsets.US_ASCII);
        return new Console(interactive, shown, shown ? screen : StandardCharsets.UTF_8, System.getenv());
    }

    /** From Java 22 on there is a console even where the streams are redirected; it then says so. */
    private static boolean isTerminal(java.io.@org.jspecify.annotations.Nullable Console console) {
        if (console == null || Runtime.version().feature() < 22) {
            return console != null;
        }
        try {
            return (boolean) java.io.Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException unknown) {
            return false;
        }
    }

    private static Optional<Charset> known(@org.jspecify.annotations.Nullable String name) {
        try {
            return name == null ? Optional.empty() : Optional.of(Charset.forName(name));
        } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
            return Optional.empty();
        }
    }

    /** The signs that the screen can show; a file or a pipe gets ASCII, so that its bytes are the same under every locale. */
    Signs signs() {
        return showsOutput ? Signs.of(charset) : Signs.ASCII;
    }

    /** Makes a stream that writes in the charset. */
    PrintStream stream(OutputStream bytes) {
        return new PrintStream(new java.io.BufferedOutputStream(bytes, 1 << 14), false, charset);
    }

    /** What answers are written on where the program does not run its own screen. */
    Paper paper(boolean colorWanted) {
        if (!showsOutput) {
            return Paper.FILE;
        }
        return new Paper(signs(), columns(), Paper.FILE.height(), styler(colorWanted));
    }

    /** Marks by color where the screen has it and nobody has asked for none. */
    Styler styler(boolean colorWanted) {
        boolean refused = !environment.getOrDefault("NO_COLOR", "").isEmpty();
        boolean dumb = environment.getOrDefault("TERM", "dumb").equals("dumb");
        return showsOutput && colorWanted && !refused && !dumb ? ColorStyler.INSTANCE : Styler.NONE;
    }

    private OptionalInt columns() {
        String columns = environment.getOrDefault("COLUMNS", "");
        boolean isNumber =
                !columns.isEmpty() && columns.length() <= 4 && columns.chars().allMatch(Character::isDigit);
        int count = isNumber ? Integer.parseInt(columns) : 0;
        return count > 0 && count <= MOST_COLUMNS ? OptionalInt.of(count) : OptionalInt.empty();
    }
}
