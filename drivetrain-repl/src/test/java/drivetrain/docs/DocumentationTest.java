package drivetrain.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Runs every program and replays every command that the pages and transcripts show. */
class DocumentationTest {

    @TempDir
    Path scratch;

    @TestFactory
    Stream<DynamicTest> printsWhatTheProgramsOfThePagesShow() {
        return Pages.markdown().stream()
                .flatMap(page -> Snippet.of(Pages.blocks(page)).stream())
                .map(snippet -> DynamicTest.dynamicTest(
                        snippet.where(), () -> snippet.check(Files.createTempDirectory(scratch, "snippet"))));
    }

    @TestFactory
    Stream<DynamicTest> answersWhatTheCommandsOfThePagesShow() {
        return Pages.markdown().stream()
                .flatMap(page -> Pages.blocks(page).stream())
                .filter(block -> block.info().equals("console"))
                .flatMap(block -> replays(block.page(), block.line(), block.content()));
    }

    @TestFactory
    Stream<DynamicTest> answersWhatTheTranscriptsShow() {
        return Pages.transcripts().stream().flatMap(file -> replays(file.toString(), 1, Pages.read(file)));
    }

    @Test
    void readmeShowsACommandAndAProgram() {
        if (Files.exists(Pages.README)) {
            List<FencedBlock> blocks = Pages.blocks(Pages.README);
            assertThat(Snippet.of(blocks)).isNotEmpty();
            assertThat(blocks)
                    .filteredOn(block -> block.info().equals("console"))
                    .isNotEmpty();
        } else {
            assertThat(Pages.markdown()).as("a guide wants a README before it").isEmpty();
        }
    }

    @Test
    void everyTranscriptShowsARun() {
        assertThat(Pages.transcripts())
                .allSatisfy(file -> assertThat(Transcript.parse(file.toString(), 1, Pages.read(file))
                                .runs())
                        .isNotEmpty());
    }

    private static Stream<DynamicTest> replays(String source, int firstLine, String text) {
        return Transcript.parse(source, firstLine, text).runs().stream()
                .map(run -> DynamicTest.dynamicTest(
                        run.where() + " " + run.text(), () -> run.replay(DocumentationTest::drivetrain)));
    }

    private static int drivetrain(String[] args, InputStream in, PrintStream out, PrintStream err) {
        try {
            return (int) Class.forName("drivetrain.repl.shell.Main")
                    .getMethod("run", String[].class, InputStream.class, PrintStream.class, PrintStream.class)
                    .invoke(null, args, in, out, err);
        } catch (InvocationTargetException thrown) {
            throw new AssertionError("the shell failed", thrown.getCause());
        } catch (ReflectiveOperationException absent) {
            throw new AssertionError("the shell cannot be started", absent);
        }
    }
}
