package drivetrain.repl.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** What the program says about itself. */
final class Manuals {

    private static final String USAGE = """
            usage: drivetrain [OPTIONS]                run the shell, or lines from a pipe
                   drivetrain [OPTIONS] -c LINE ...    run lines and end
                   drivetrain [OPTIONS] --file SCRIPT  run the lines of a script and end

              --output FORM    table, plain, csv, json or markdown
              --units SYSTEM   us, metric or both
              --catalog FILE   look parts up in this catalog
              --keep-going     run the lines behind a refused one; the exit status still tells
              --no-color       mark nothing by color
              --debug          show where a fault of the program lies
              --version        show the version
              --help           show this

            exit status: 0 good, 1 a line was refused or not answered, 2 called wrongly,
            3 a file could not be read or written, 130 ended by Ctrl-C

            drivetrain -c "tire 285/75R16" -c "axle 41/10" -c "transfer 1.00 2.72" \\
                -c "transmission 4.03 2.36 1.53 1.15 0.85 0.67" -c "cruise 65 mph"
            drivetrain -c "help" lists the words of a line.
            """;

    private Manuals() {}

    static String usage() {
        return USAGE;
    }

    static String version() {
        try (InputStream in = Manuals.class.getResourceAsStream("version.txt")) {
            return in == null ? "unknown" : new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
