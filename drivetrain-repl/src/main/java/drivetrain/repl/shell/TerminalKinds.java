package drivetrain.repl.shell;

import org.jline.utils.InfoCmp;

/** What a terminal of a known kind can do. */
final class TerminalKinds {

    private TerminalKinds() {}

    /**
     * Takes the description of a common kind of terminal from the terminal library, which otherwise starts a program to ask the system for
     * it, at every start. For any other kind the system is asked.
     */
    @SuppressWarnings(
            "NullAway") // the library gives null for a kind that it does not know, whatever its annotations say
    static void know(String kind) {
        String capabilities = InfoCmp.getDefaultInfoCmp(kind);
        if (capabilities != null) {
            InfoCmp.setLoadedInfoCmp(kind, capabilities);
        }
    }
}
