package drivetrain.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * One run of the program as a text shows it.
 *
 * @param where page and line
 * @param text the command line as written
 * @param command the command line as read
 * @param typed lines fed to the program's input
 * @param printed lines that the program prints on either stream; a line {@code ...} stands for any lines
 */
record Run(String where, String text, CommandLine command, String typed, List<String> printed) {

    private static final String ANY_LINES = "...";

    /** Runs the program and fails unless it prints what the text shows. */
    void replay(Program program) {
        ByteArrayOutputStream screen = new ByteArrayOutputStream();
        int status;
        try (PrintStream out = new PrintStream(screen, true, StandardCharsets.UTF_8)) {
            byte[] input = (command.input() + typed).getBytes(StandardCharsets.UTF_8);
            status = program.run(command.args().toArray(String[]::new), new ByteArrayInputStream(input), out, out);
        }
        String answered = screen.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
        String actual = answered + (command.echoesStatus() ? status + "\n" : "");
        String expected = printed.stream().map(line -> line + "\n").collect(Collectors.joining());
        if (!shown().matcher(actual).matches()) {
            assertThat(actual).as("%s: %s", where, text).isEqualTo(expected);
        }
        if (!command.echoesStatus()) {
            assertThat(status).as("%s: exit status of %s", where, text).isZero();
        }
    }

    private Pattern shown() {
        return Pattern.compile(printed.stream()
                .map(line -> line.equals(ANY_LINES) ? "(?:.*\\n)*" : Pattern.quote(line + "\n"))
                .collect(Collectors.joining()));
    }
}
