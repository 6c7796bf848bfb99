package drivetrain.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class CommandLineTest {

    @Test
    void keepsQuotedWordsTogether() {
        assertThat(CommandLine.parse("drivetrain -c 'tire 285/75R16' -c \"axle 41/10\" --output json"))
                .hasValue(new CommandLine(
                        List.of("-c", "tire 285/75R16", "-c", "axle 41/10", "--output", "json"), "", false));
    }

    @Test
    void takesTheLauncherByItsPath() {
        assertThat(CommandLine.parse("drivetrain-repl/bin/drivetrain")).hasValue(new CommandLine(List.of(), "", false));
    }

    @Test
    void readsPipedInputAndEchoedStatus() {
        assertThat(CommandLine.parse("printf 'open demo\\ncrawl\\n' | drivetrain --file -; echo $?"))
                .hasValue(new CommandLine(List.of("--file", "-"), "open demo\ncrawl\n", true));
    }

    @Test
    void passesOverOtherPrograms() {
        assertThat(CommandLine.parse("mvn verify")).isEmpty();
        assertThat(CommandLine.parse("drivetrains")).isEmpty();
    }

    @Test
    void refusesWhatItCannotReplay() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CommandLine.parse("drivetrain -c crawl > crawl.txt"))
                .withMessage("cannot replay: > crawl.txt");
    }
}
