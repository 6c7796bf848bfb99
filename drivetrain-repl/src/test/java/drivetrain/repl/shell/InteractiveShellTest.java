package drivetrain.repl.shell;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.repl.command.Vocabulary;
import drivetrain.repl.session.Session;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.ExternalTerminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The shell on a terminal whose keys and screen are byte streams. */
@Timeout(60)
class InteractiveShellTest {

    private static final String END = "\u0004";

    @TempDir
    Path folder;

    /** Types keys and returns what the screen was sent. */
    private String screen(String keys, int columns, Charset charset, Map<String, String> more) throws IOException {
        ByteArrayOutputStream shown = new ByteArrayOutputStream();
        return screen(new Keys(shown, charset).once("untitled", keys), shown, columns, charset, more);
    }

    private String screen(
            Keys keys, ByteArrayOutputStream shown, int columns, Charset charset, Map<String, String> more)
            throws IOException {
        return screen(Words.vocabulary(), keys, shown, columns, charset, more);
    }

    private String screen(
            Vocabulary vocabulary,
            Keys keys,
            ByteArrayOutputStream shown,
            int columns,
            Charset charset,
            Map<String, String> more)
            throws IOException {
        Map<String, String> environment = new HashMap<>(Map.of("XDG_STATE_HOME", folder.toString()));
        environment.putAll(more);
        Console console = new Console(true, true, charset, environment);
        Options options = OptionReader.read(new String[0]);
        try (Terminal terminal = new ExternalTerminal("test", "ansi", keys, shown, charset)) {
            terminal.setSize(new Size(columns, 24));
            Session first = FirstSession.of(options);
            assertThat(new InteractiveShell(vocabulary, console, options, first).run(terminal))
                    .isZero();
        }
        return shown.toString(charset);
    }

    private String screen(String keys) throws IOException {
        return screen(keys, 80, StandardCharsets.UTF_8, Map.of())
                .replaceAll("\u001B\\[[0-9;?]*[a-zA-Z]|\u001B[=>]|\r", "");
    }

    @Test
    void greetsInThreeLinesWithANextStep() throws IOException {
        assertThat(screen(END).lines().limit(4))
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("Drivetrain "),
                        second -> assertThat(second).contains("open demo"),
                        third -> assertThat(third).contains("help"),
                        prompt -> assertThat(prompt).startsWith("untitled "));
    }

    @Test
    void answersAndShowsTheTitle() throws IOException {
        assertThat(screen("open demo\rcruise 65 mph\r" + END))
                .contains(
                        "Opened: Coast tourer.\n", "Coast tourer \u22B8 ", "At 65.0 mph in 6th high the engine turns");
    }

    @Test
    void marksWorkThatIsNotSaved() throws IOException {
        assertThat(screen("title fence line\r" + END)).contains("fence line* \u22B8 ");
    }

    @Test
    void underlinesAFault() throws IOException {
        assertThat(screen("axle 4,10\rshow\r" + END)).contains("\n  axle 4,10\n", "^\n", "Nothing is chosen yet.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"quit\r", "exit\r", "\u0004"})
    void ends(String keys) throws IOException {
        assertThat(screen(keys + "title never\r" + END)).doesNotContain("never*");
    }

    @Test
    void dropsTheLineOnCtrlC() throws IOException {
        ByteArrayOutputStream shown = new ByteArrayOutputStream();
        Keys keys = new Keys(shown, StandardCharsets.UTF_8)
                .once("untitled \u22B8 ", "title dropped")
                .once("title dropped", "\u0003")
                .once("title dropped\r\r\n", "show\r" + END);
        String screen = screen(keys, shown, 80, StandardCharsets.UTF_8, Map.of());
        assertThat(screen).contains("Nothing is chosen yet.").doesNotContain("dropped*");
        assertThat(folder.resolve("drivetrain/history")).hasContent("show");
    }

    @Test
    void givesALongSweepUpOnCtrlCAndChangesNothing() throws IOException {
        ByteArrayOutputStream shown = new ByteArrayOutputStream();
        Vocabulary vocabulary =
                Words.vocabulary(told -> shown.writeBytes("still at work".getBytes(StandardCharsets.UTF_8)));
        Keys keys = new Keys(shown, StandardCharsets.UTF_8)
                .once("untitled", "open demo\rtitle before\r")
                .once(
                        "before*",
                        "sweep axle 3.07..5.38 step 0.003 and transmission all where load margin at least 0 % --yes\r")
                .once("still at work", "\u0003")
                .once("Given up", "show\r" + END);
        assertThat(screen(vocabulary, keys, shown, 200, StandardCharsets.UTF_8, Map.of()))
                .contains("Given up; nothing has changed.")
                .doesNotContain("keep every wish")
                .containsPattern("(?s)Given up.*before");
    }

    @Test
    void completesOnTabAlone() throws IOException {
        assertThat(screen("ax\t rp-4.10\raxle\r" + END)).contains("front axle  rp-4.10");
        assertThat(screen("cru\r" + END)).contains("word \"cru\": is not known here");
    }

    @Test
    void writesEachLineToTheHistory() throws IOException {
        screen("open demo\rno such word\r" + END);
        assertThat(Files.readAllLines(folder.resolve("drivetrain/history")))
                .containsExactly("open demo", "no such word");
        screen("crawl\r" + END);
        assertThat(Files.readAllLines(folder.resolve("drivetrain/history"))).hasSize(3);
    }

    @Test
    void bringsEarlierLinesBack() throws IOException {
        screen("units metric\r" + END);
        assertThat(screen("\u001B[A\runits\r" + END)).contains("units  metric");
    }

    @Test
    void startsWithADamagedHistory() throws IOException {
        Files.createDirectories(folder.resolve("drivetrain"));
        Files.write(folder.resolve("drivetrain/history"), new byte[] {(byte) 0xFF, 0, '\n', ':', '\n'});
        assertThat(screen("units\r" + END)).contains("units  us");
    }

    @Test
    void startsWhereNothingCanBeWritten() throws IOException {
        Files.writeString(folder.resolve("drivetrain"), "in the way");
        assertThat(screen("units\r" + END)).contains("units  us");
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 60, 80, 120})
    void neverWritesALineWiderThanTheScreen(int columns) throws IOException {
        String keys = "open demo\rcruise 65 mph\rcheck\rhelp\raxle 4,10\rplot speeds\rshow\rtorque\r" + END;
        String shown = screen(keys, columns, StandardCharsets.UTF_8, Map.of())
                .replaceAll("\u001B\\[[0-9;?]*[a-zA-Z]|\u001B[=>]|\r", "");
        assertThat(shown.lines().filter(line -> !line.contains("\u22B8")))
                .allSatisfy(line ->
                        assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(columns));
    }

    @Test
    void writesAsciiWhereTheCharsetHasNoMore() throws IOException {
        String shown = screen("open demo\rtorque\rplot speeds\r" + END, 80, StandardCharsets.US_ASCII, Map.of());
        assertThat(shown).contains("Coast tourer -o ").doesNotContain("?  ");
        assertThat(shown.chars()).allMatch(sign -> sign < 128 && sign != '\uFFFD');
    }

    @Test
    void marksByColorOnlyIfTheScreenHasIt() throws IOException {
        String keys = "open demo\rcheck\r" + END;
        assertThat(screen(keys, 80, StandardCharsets.UTF_8, Map.of("TERM", "xterm")))
                .contains("\u001B[32mmet\u001B[0m");
        assertThat(screen(keys, 80, StandardCharsets.UTF_8, Map.of("TERM", "xterm", "NO_COLOR", "1")))
                .doesNotContain("\u001B[32m", "\u001B[1m");
    }
}
