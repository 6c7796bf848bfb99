package drivetrain.repl.shell;

import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import drivetrain.repl.command.keep.OutputCommand;
import drivetrain.repl.command.keep.UnitsCommand;
import drivetrain.repl.session.OutputForm;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the words that the program was called with. */
final class OptionReader {

    private static final List<String> KNOWN = List.of(
            "-c",
            "--file",
            "--catalog",
            "--output",
            "--units",
            "--keep-going",
            "--no-color",
            "--debug",
            "--version",
            "--help");

    private final String[] args;
    private int at;

    private Options.Request request = Options.Request.RUN;
    private final List<String> lines = new ArrayList<>();
    private Optional<String> script = Optional.empty();
    private Optional<String> catalog = Optional.empty();
    private Optional<OutputForm> output = Optional.empty();
    private Optional<UnitSystem> units = Optional.empty();
    private boolean keepsGoing;
    private boolean color = true;
    private boolean debug;

    private OptionReader(String[] args) {
        this.args = args.clone();
    }

    /**
     * Reads the options.
     *
     * @throws RefusedException if a word is not an option or lacks its value
     */
    static Options read(String[] args) {
        OptionReader reader = new OptionReader(args);
        while (reader.at < reader.args.length) {
            reader.next();
        }
        return reader.finish();
    }

    private void next() {
        String word = args[at++];
        int equals = word.startsWith("--") ? word.indexOf('=') : -1;
        String name = equals < 0 ? word : word.substring(0, equals);
        Optional<String> joined = equals < 0 ? Optional.empty() : Optional.of(word.substring(equals + 1));
        switch (name) {
            case "-c" -> lines.add(value(name, joined, "a line, such as -c \"cruise 65 mph\""));
            case "--file" -> script = Optional.of(value(name, joined, "a script"));
            case "--catalog" -> catalog = Optional.of(value(name, joined, "a catalog file"));
            case "--output" -> output = Optional.of(OutputCommand.form(value(name, joined, OutputCommand.ALLOWED)));
            case "--units" -> units = Optional.of(UnitsCommand.system(value(name, joined, UnitsCommand.ALLOWED)));
            default -> flag(name, word, joined);
        }
    }

    private void flag(String name, String word, Optional<String> joined) {
        if (joined.isPresent() && KNOWN.contains(name)) {
            throw Refusal.of("option", word, "takes no value").allowing(name).asException();
        }
        switch (word) {
            case "--keep-going" -> keepsGoing = true;
            case "--no-color" -> color = false;
            case "--debug" -> debug = true;
            case "--version" -> request = Options.Request.VERSION;
            case "--help", "-h" -> request = Options.Request.HELP;
            default -> throw unknown(word);
        }
    }

    private static RefusedException unknown(String word) {
        if (word.startsWith("-")) {
            return Refusal.of("option", word, "is not an option of this program")
                    .allowing("the options that --help lists")
                    .suggesting(NearNames.of(word, KNOWN))
                    .asException();
        }
        return Refusal.of("argument", word, "stands without an option")
                .allowing("-c \"" + word + "\" for a line, --file " + word + " for a script")
                .asException();
    }

    private String value(String name, Optional<String> joined, String wanted) {
        if (joined.isPresent()) {
            return joined.get();
        }
        if (at == args.length) {
            throw Refusal.of("option", name, "lacks its value").allowing(wanted).asException();
        }
        return args[at++];
    }

    private Options finish() {
        if (script.isPresent() && !lines.isEmpty()) {
            throw Refusal.of("options", "-c and --file", "are given together")
                    .allowing("one of them")
                    .asException();
        }
        return new Options(request, lines, script, catalog, output, units, keepsGoing, color, debug);
    }
}
