package drivetrain.repl.shell;

/** How the program ends, as the caller of a command line sees it. */
final class ExitStatus {

    /** Everything was answered. */
    static final int GOOD = 0;

    /** An input was refused or an answer could not be worked out. */
    static final int REFUSED = 1;

    /** The program was called wrongly. */
    static final int USAGE = 2;

    /** A file could not be read or written. */
    static final int FILE = 3;

    /** Ctrl-C ended the program. */
    static final int INTERRUPTED = 130;

    private ExitStatus() {}
}
