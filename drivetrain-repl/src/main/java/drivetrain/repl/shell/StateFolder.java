package drivetrain.repl.shell;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Where the program keeps what it remembers between runs: the state folder of the XDG Base Directory Specification 0.8. */
final class StateFolder {

    private StateFolder() {}

    /**
     * Finds the folder.
     *
     * @param environment the environment; {@code XDG_STATE_HOME} counts only if it is an absolute path, as the specification says
     * @param home the user's home folder
     * @return the folder, which need not exist; empty if no place is known
     */
    static Optional<Path> in(Map<String, String> environment, String home) {
        Optional<Path> base = absolute(environment.getOrDefault("XDG_STATE_HOME", ""))
                .or(() -> absolute(home).map(folder -> folder.resolve(".local").resolve("state")));
        return base.map(folder -> folder.resolve("drivetrain"));
    }

    private static Optional<Path> absolute(String text) {
        try {
            return Optional.of(Path.of(text)).filter(Path::isAbsolute);
        } catch (InvalidPathException unusable) {
            return Optional.empty();
        }
    }
}
