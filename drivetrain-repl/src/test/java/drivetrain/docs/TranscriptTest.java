package drivetrain.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class TranscriptTest {

    @Test
    void replaysACommandWithItsOutput() {
        replay("$ drivetrain one 'two three'\none|two three\n");
    }

    @Test
    void joinsContinuedLines() {
        replay("$ drivetrain one \\\n    two\none|two\n");
    }

    @Test
    void feedsTypedLinesToTheInput() {
        replay("$ drivetrain\n> first\n\nfirst\n> second\nsecond\n");
    }

    @Test
    void comparesTheEchoedStatus() {
        replay("$ drivetrain fail; echo $?\nfail\n1\n");
    }

    @Test
    void letsDotsStandForAnyLines() {
        replay("$ drivetrain\n> a\n> b\n> c\n\n...\nc\n");
    }

    @Test
    void passesOverRemarksAndOtherPrograms() {
        Transcript transcript = Transcript.parse("t.txt", 1, "# a remark\n\n$ mvn verify\n[INFO]\n$ drivetrain x\nx\n");

        assertThat(transcript.runs()).extracting(Run::where).containsExactly("t.txt:5");
    }

    @Test
    void failsOnOtherOutput() {
        assertThatThrownBy(() -> replay("$ drivetrain one\ntwo\n"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("t.txt:1: drivetrain one");
    }

    @Test
    void failsOnMoreOutputThanShown() {
        assertThatThrownBy(() -> replay("$ drivetrain\n> a\n> b\n\na\n")).isInstanceOf(AssertionError.class);
    }

    @Test
    void failsOnAStatusThatIsNotShown() {
        assertThatThrownBy(() -> replay("$ drivetrain fail\nfail\n"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("exit status");
    }

    @Test
    void refusesOutputWithoutCommand() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transcript.parse("t.txt", 1, "# remark\nstray\n"))
                .withMessage("t.txt:2: neither a remark nor a command: stray");
    }

    private static void replay(String text) {
        List<Run> runs = Transcript.parse("t.txt", 1, text).runs();
        assertThat(runs).hasSize(1);
        runs.get(0).replay(TranscriptTest::echo);
    }

    /** Prints its arguments on one line, then its input; fails if the first argument says so. */
    private static int echo(String[] args, InputStream in, PrintStream out, PrintStream err) {
        out.print(String.join("|", args) + "\n");
        try {
            out.print(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return args.length > 0 && args[0].equals("fail") ? 1 : 0;
    }
}
