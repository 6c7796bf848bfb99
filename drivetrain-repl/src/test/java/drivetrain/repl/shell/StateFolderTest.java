package drivetrain.repl.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class StateFolderTest {

    @Test
    void followsTheEnvironment() {
        assertThat(StateFolder.in(Map.of("XDG_STATE_HOME", "/var/state"), "/home/shop"))
                .contains(Path.of("/var/state/drivetrain"));
    }

    @Test
    void fallsBackToTheHomeFolder() {
        assertThat(StateFolder.in(Map.of(), "/home/shop")).contains(Path.of("/home/shop/.local/state/drivetrain"));
    }

    /** XDG Base Directory Specification 0.8: a relative path is invalid and is ignored. */
    @Test
    void ignoresARelativePath() {
        assertThat(StateFolder.in(Map.of("XDG_STATE_HOME", "state"), "/home/shop"))
                .contains(Path.of("/home/shop/.local/state/drivetrain"));
    }

    @Test
    void isNowhereWithoutAHome() {
        assertThat(StateFolder.in(Map.of(), "")).isEmpty();
        assertThat(StateFolder.in(Map.of(), "\0")).isEmpty();
    }
}
